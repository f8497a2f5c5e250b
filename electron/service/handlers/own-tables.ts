import { ownTables } from '../store/table-rows.ts'
import type { QueryHandler } from './handler.ts'

export const readOwnTables: QueryHandler<'tables.own'> = async ({ trx }) => {
  const { forms, threads } = await ownTables(trx)
  return { forms: [...forms], threads: [...threads] }
}
