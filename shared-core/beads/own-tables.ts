import type { BeadForm } from './bead-form.ts'
import { referenceTables } from './bead-tables.ts'
import type { Thread } from './thread.ts'
import { type BeadTables, withUserForms } from './user-forms.ts'

/** What a workshop has written down itself; an entry with a reference's id replaces it. */
export type OwnTables = Readonly<{ forms: readonly BeadForm[]; threads: readonly Thread[] }>

/**
 * The tables a workshop reckons with: the reference tables, its own forms and threads added.
 *
 * @throws RangeError where an entry cannot be used: each was checked before it was kept
 */
export function tablesWithOwn(own: OwnTables): BeadTables {
  if (own.forms.length === 0 && own.threads.length === 0) return referenceTables
  const merged = withUserForms(referenceTables, own)
  if (merged.ok) return merged.value
  throw new RangeError(`tablesWithOwn: ${merged.error[0]?.message}`)
}
