import type { BeadForm } from '../../../shared-core/beads/bead-form.ts'
import { findForm, findThread, referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import type { Thread } from '../../../shared-core/beads/thread.ts'
import { refuse } from '../refused.ts'
import type { Act } from '../store/act.ts'
import { findOwnForm, findOwnThread, fromForm, fromThread } from '../store/table-rows.ts'

/** What an entry of the tables is chosen by. */
export type Named = Readonly<{ id: string; name: string }>

/** Two of one name could not be told apart where one is chosen. */
export function refuseTwin(
  entries: readonly Named[],
  { id, name }: Named,
  field: string,
  what: 'form' | 'thread',
): void {
  const twin = entries.find((one) => one.id !== id && one.name.toLowerCase() === name.toLowerCase())
  if (twin === undefined) return
  refuse(
    'name-taken',
    `There is a ${what} called ${twin.name} already.`,
    'Give this one another name, or change that one.',
    field,
  )
}

/** What writing an entry came to. */
export type Put = 'added' | 'replaced' | 'same'

/** Writes a bead form of the workshop’s own, in the place of one with its id. */
export async function putForm(act: Act, form: BeadForm): Promise<Put> {
  const row = await findOwnForm(act.trx, form.id)
  const columns = fromForm(form)
  if (row === undefined) {
    await act.insert('own_form', { id: act.newId('form'), ...columns })
    return findForm(referenceTables, form.id) === undefined ? 'added' : 'replaced'
  }
  return (await act.update('own_form', row.id, columns)) ? 'replaced' : 'same'
}

/** Writes a thread of the workshop’s own, in the place of one with its id. */
export async function putThread(act: Act, thread: Thread): Promise<Put> {
  const row = await findOwnThread(act.trx, thread.id)
  const columns = fromThread(thread)
  if (row === undefined) {
    await act.insert('own_thread', { id: act.newId('thr'), ...columns })
    return findThread(referenceTables, thread.id) === undefined ? 'added' : 'replaced'
  }
  return (await act.update('own_thread', row.id, columns)) ? 'replaced' : 'same'
}
