import type { Transaction } from 'kysely'
import type { BeadForm } from '../../../shared-core/beads/bead-form.ts'
import { type OwnTables, tablesWithOwn } from '../../../shared-core/beads/own-tables.ts'
import type { Thread } from '../../../shared-core/beads/thread.ts'
import type { BeadTables } from '../../../shared-core/beads/user-forms.ts'
import type { Basis, Spread } from '../../../shared-core/units/spread.ts'
import type { Database, Row } from './database.ts'

/** The workshop's own bead forms and threads, by name. */
export async function ownTables(trx: Transaction<Database>): Promise<OwnTables> {
  const forms = await trx
    .selectFrom('own_form')
    .selectAll()
    .where('removed_by', 'is', null)
    .orderBy('name')
    .orderBy('id')
    .execute()
  const threads = await trx
    .selectFrom('own_thread')
    .selectAll()
    .where('removed_by', 'is', null)
    .orderBy('name')
    .orderBy('id')
    .execute()
  return { forms: forms.map(toForm), threads: threads.map(toThread) }
}

/** The row of a bead form of the workshop's own, by the id that designs and materials name. */
export function findOwnForm(
  trx: Transaction<Database>,
  formId: string,
): Promise<Row<'own_form'> | undefined> {
  return trx
    .selectFrom('own_form')
    .selectAll()
    .where('form_id', '=', formId)
    .where('removed_by', 'is', null)
    .executeTakeFirst()
}

/** The row of a thread of the workshop's own, by the id that designs and materials name. */
export function findOwnThread(
  trx: Transaction<Database>,
  threadId: string,
): Promise<Row<'own_thread'> | undefined> {
  return trx
    .selectFrom('own_thread')
    .selectAll()
    .where('thread_id', '=', threadId)
    .where('removed_by', 'is', null)
    .executeTakeFirst()
}

/** The tables this workshop reckons with: the reference tables, its own forms and threads added. */
export async function workshopTables(trx: Transaction<Database>): Promise<BeadTables> {
  return tablesWithOwn(await ownTables(trx))
}

/** A bead form as columns. */
export function fromForm(form: BeadForm) {
  return {
    form_id: form.id,
    name: form.name,
    family: form.family,
    size_label: form.sizeLabel,
    ...mmColumns('diameter', form.diameterMm),
    ...mmColumns('length', form.lengthMm),
    ...mmColumns('hole', form.holeMm),
    beads_per_gram: form.beadsPerGram.value,
    beads_per_gram_low: form.beadsPerGram.low,
    beads_per_gram_high: form.beadsPerGram.high,
    beads_per_gram_basis: form.beadsPerGram.basis,
    cull_rate: form.cullRate.value,
    cull_rate_low: form.cullRate.low,
    cull_rate_high: form.cullRate.high,
    cull_rate_basis: form.cullRate.basis,
  }
}

/** A thread as columns. */
export function fromThread(thread: Thread) {
  return {
    thread_id: thread.id,
    name: thread.name,
    construction: thread.construction,
    ...mmColumns('diameter', thread.diameterMm),
    tex: thread.tex ?? null,
  }
}

type MmColumns<N extends string> = Record<`${N}_mm` | `${N}_low_mm` | `${N}_high_mm`, number> &
  Record<`${N}_basis`, Basis>

function mmColumns<N extends string>(name: N, { value, low, high, basis }: Spread) {
  return {
    [`${name}_mm`]: value,
    [`${name}_low_mm`]: low,
    [`${name}_high_mm`]: high,
    [`${name}_basis`]: basis,
  } as MmColumns<N>
}

function toForm(row: Row<'own_form'>): BeadForm {
  return {
    id: row.form_id,
    name: row.name,
    family: row.family,
    sizeLabel: row.size_label,
    diameterMm: spreadOf(
      row.diameter_low_mm,
      row.diameter_mm,
      row.diameter_high_mm,
      row.diameter_basis,
    ),
    lengthMm: spreadOf(row.length_low_mm, row.length_mm, row.length_high_mm, row.length_basis),
    holeMm: spreadOf(row.hole_low_mm, row.hole_mm, row.hole_high_mm, row.hole_basis),
    beadsPerGram: spreadOf(
      row.beads_per_gram_low,
      row.beads_per_gram,
      row.beads_per_gram_high,
      row.beads_per_gram_basis,
    ),
    cullRate: spreadOf(row.cull_rate_low, row.cull_rate, row.cull_rate_high, row.cull_rate_basis),
  }
}

function toThread(row: Row<'own_thread'>): Thread {
  const thread = {
    id: row.thread_id,
    name: row.name,
    construction: row.construction,
    diameterMm: spreadOf(
      row.diameter_low_mm,
      row.diameter_mm,
      row.diameter_high_mm,
      row.diameter_basis,
    ),
  }
  return row.tex === null ? thread : { ...thread, tex: row.tex }
}

function spreadOf(low: number, value: number, high: number, basis: Basis): Spread {
  return { value, low, high, basis }
}
