import type { BeadForm } from '../../../shared-core/beads/bead-form.ts'
import {
  findForm,
  findNeedle,
  findThread,
  referenceTables,
} from '../../../shared-core/beads/bead-tables.ts'
import type { Needle, Thread } from '../../../shared-core/beads/thread.ts'
import {
  type BeadTables,
  type UserTables,
  withUserForms,
} from '../../../shared-core/beads/user-forms.ts'
import type { Refusal } from '../../../shared-core/refusal.ts'
import { Refused, refuse } from '../refused.ts'

/** The reference tables with the caller's own; the first entry that cannot be used is refused. */
export function tablesWith(own: UserTables | undefined): BeadTables {
  const merged = withUserForms(referenceTables, own ?? {})
  return merged.ok ? merged.value : refuseFirst(merged.error, 'tables.')
}

/** Ends a handler with the first of some refusals, its field found from the top of the input. */
export function refuseFirst(refusals: readonly Refusal[], path = ''): never {
  const [first] = refusals
  if (first === undefined) throw new Error('Broken assumption: a refusal says something')
  const { field } = first
  throw new Refused({ ...first, ...(field === undefined ? {} : { field: `${path}${field}` }) })
}

/** The form with this id; `unknown-form` where no table has it. */
export function formIn(tables: BeadTables, id: string, field = 'formId'): BeadForm {
  return findForm(tables, id) ?? unknown('form', id, field)
}

/** The thread with this id; `unknown-thread` where no table has it. */
export function threadIn(tables: BeadTables, id: string, field = 'threadId'): Thread {
  return findThread(tables, id) ?? unknown('thread', id, field)
}

/** The needle of this size; `unknown-needle` where no table has it. */
export function needleIn(tables: BeadTables, size: string): Needle {
  return findNeedle(tables, size) ?? unknown('needle', size, 'needleSize')
}

function unknown(what: 'form' | 'thread' | 'needle', id: string, field: string): never {
  return refuse(
    `unknown-${what}`,
    `The ${what} "${id}" is in none of the tables.`,
    `Choose a ${what} that engine.tables lists, or send it in tables.`,
    field,
  )
}
