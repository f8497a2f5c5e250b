import type { Generated } from 'kysely'

/** A line of a ledger. A line that takes back another names it, and the first of the chain. */
export type LedgerLine = Readonly<{
  id: Generated<number>
  at_ms: number
  action_id: string
  head_id: number | null
  reverses_id: number | null
}>
