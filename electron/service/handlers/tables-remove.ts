import { findForm, findThread, referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { refuse } from '../refused.ts'
import { findOwnForm, findOwnThread } from '../store/table-rows.ts'
import { type EntryUses, readTableUses } from '../table-uses.ts'
import type { ActHandler } from './handler.ts'
import type { Named } from './put-entry.ts'

export const removeForm: ActHandler<'tables.removeForm'> = async (act, { id }) => {
  const row = await findOwnForm(act.trx, id)
  const reference = findForm(referenceTables, id)
  if (row === undefined) return refuseNotOwn('form', reference, id)
  if (reference === undefined) {
    refuseInUse(row.name, 'form', (await readTableUses(act.trx)).forms.get(id))
  }
  await act.remove('own_form', row.id)
  return { value: {}, label: `Removed the form ${row.name}` }
}

export const removeThread: ActHandler<'tables.removeThread'> = async (act, { id }) => {
  const row = await findOwnThread(act.trx, id)
  const reference = findThread(referenceTables, id)
  if (row === undefined) return refuseNotOwn('thread', reference, id)
  if (reference === undefined) {
    refuseInUse(row.name, 'thread', (await readTableUses(act.trx)).threads.get(id))
  }
  await act.remove('own_thread', row.id)
  return { value: {}, label: `Removed the thread ${row.name}` }
}

function refuseNotOwn(what: 'form' | 'thread', reference: Named | undefined, id: string): never {
  if (reference === undefined) {
    return refuse(
      'not-found',
      `There is no ${what} ${id}.`,
      'Choose one that tables.list gives.',
      'id',
    )
  }
  return refuse(
    'not-own',
    `${reference.name} belongs to the reference tables and stays.`,
    'Leave it unused, or save your own figures in its place.',
    'id',
  )
}

const NAMES_TOLD = 3

/** A form or thread that something names stays: counts, lengths and weights of it rest on the figures. */
function refuseInUse(name: string, what: 'form' | 'thread', uses: EntryUses | undefined): void {
  if (uses === undefined) return
  const told = [
    ...toldOf('material', uses.materials),
    ...toldOf('design', [...uses.designs.values()]),
  ].join(', and in ')
  refuse(
    'in-use',
    `${name} is in use in ${told}.`,
    `Give ${uses.designs.size === 0 ? 'those materials' : 'all of them'} another ${what} first, or keep it.`,
    'id',
  )
}

function toldOf(one: string, names: readonly string[]): readonly string[] {
  if (names.length === 0) return []
  const some = names.slice(0, NAMES_TOLD).join(', ')
  const more = names.length > NAMES_TOLD ? ` and ${names.length - NAMES_TOLD} more` : ''
  return [`${names.length === 1 ? `the ${one}` : `${names.length} ${one}s:`} ${some}${more}`]
}
