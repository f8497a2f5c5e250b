import type { BeadForm } from './bead-form.ts'
import { beadForms } from './forms.ts'
import { needles } from './needles.ts'
import type { Needle, Thread } from './thread.ts'
import { threads } from './threads.ts'
import type { BeadTables } from './user-forms.ts'

/** The reference forms, threads and needles, before a workshop adds its own. */
export const referenceTables: BeadTables = { forms: beadForms, threads, needles }

/** The form with this id, if the tables know it. */
export function findForm(tables: BeadTables, id: string): BeadForm | undefined {
  return tables.forms.find((form) => form.id === id)
}

/** The thread with this id, if the tables know it. */
export function findThread(tables: BeadTables, id: string): Thread | undefined {
  return tables.threads.find((thread) => thread.id === id)
}

/** The needle of this trade size, if the tables know it. */
export function findNeedle(tables: BeadTables, size: string): Needle | undefined {
  return tables.needles.find((needle) => needle.size === size)
}
