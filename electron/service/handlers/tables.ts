import type { BeadForm } from '../../../shared-core/beads/bead-form.ts'
import { findThread, referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { beadForms } from '../../../shared-core/beads/forms.ts'
import { tablesWithOwn } from '../../../shared-core/beads/own-tables.ts'
import { ownTables } from '../store/table-rows.ts'
import { type EntryUses, readTableUses } from '../table-uses.ts'
import type { QueryHandler } from './handler.ts'

export const listAllTables: QueryHandler<'tables.list'> = async ({ trx }) => {
  const own = await ownTables(trx)
  const tables = tablesWithOwn(own)
  const uses = await readTableUses(trx)
  const known = new Map(beadForms.map(({ id, evidence }) => [id, evidence]))
  const ownForms = new Set(own.forms.map(({ id }) => id))
  const ownThreads = new Set(own.threads.map(({ id }) => id))
  return {
    forms: tables.forms.map((form) => ({
      ...plainForm(form),
      origin: originOf(form.id, ownForms, known.has(form.id)),
      evidence: (ownForms.has(form.id) ? undefined : known.get(form.id)) ?? ('own' as const),
      uses: countsOf(uses.forms.get(form.id)),
    })),
    threads: tables.threads.map((thread) => ({
      ...thread,
      origin: originOf(thread.id, ownThreads, findThread(referenceTables, thread.id) !== undefined),
      uses: countsOf(uses.threads.get(thread.id)),
    })),
  }
}

/** The form's own fields, without what the reference table adds. */
function plainForm({ id, name, family, sizeLabel, ...rest }: BeadForm): BeadForm {
  const { diameterMm, lengthMm, holeMm, beadsPerGram, cullRate } = rest
  return { id, name, family, sizeLabel, diameterMm, lengthMm, holeMm, beadsPerGram, cullRate }
}

function originOf(id: string, own: ReadonlySet<string>, isReference: boolean) {
  if (!own.has(id)) return 'reference' as const
  return isReference ? ('replaces' as const) : ('own' as const)
}

function countsOf(uses: EntryUses | undefined) {
  return { materials: uses?.materials.length ?? 0, designs: uses?.designs.size ?? 0 }
}
