import type { Refusal } from '../../shared-core/refusal.ts'
import type { Result } from '../../shared-core/result.ts'
import { Refused } from './refused.ts'
import type { Store } from './store/open-store.ts'
import type { View } from './store/view.ts'

/** What answers need: the store if there is one, a clock, ids, and where faults are noted. */
export type Desk = Readonly<{
  store: Result<Store, Refusal>
  memory: View['memory']
  now: () => number
  newId: (prefix: string) => string
  log: (message: string) => void
  /** Whether answers are checked against the contract too: in tests and while developing. */
  checkOutputs: boolean
}>

/** Works on one view of the desk's store; throws `Refused` where there is none. */
export function onStore<T>(
  { store, memory }: Desk,
  isolation: 'repeatable read' | 'serializable',
  work: (view: View) => Promise<T>,
): Promise<T> {
  if (!store.ok) throw new Refused(store.error)
  return store.value.db
    .transaction()
    .setIsolationLevel(isolation)
    .execute((trx) => work({ trx, memory }))
}
