import { findRedoable, findUndoable } from '../store/history.ts'
import type { QueryHandler } from './handler.ts'

export const listHistory: QueryHandler<'history.list'> = async ({ trx }, { limit }) => {
  const rows = await trx
    .selectFrom('action')
    .selectAll()
    .orderBy('seq', 'desc')
    .limit(limit)
    .execute()
  return {
    entries: rows.map((row) => ({
      id: row.id,
      atMs: row.at_ms,
      call: row.call,
      label: row.label,
      state: row.state,
    })),
    canUndo: (await findUndoable(trx)) !== undefined,
    canRedo: (await findRedoable(trx)) !== undefined,
  }
}
