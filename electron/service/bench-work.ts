import type { z } from 'zod'
import { handAt, type MakeOutline } from '../../shared-core/bench/make-outline.ts'
import type { ReaderPlace } from '../../shared-core/bench/reader-place.ts'
import type { benchWork } from '../../shared-core/contract/bench-calls.ts'
import { scaleSpread } from '../../shared-core/units/spread-arithmetic.ts'
import { factsAsWorked, readLearning } from './learned.ts'
import type { AskingWork } from './make-plan.ts'
import { refuse } from './refused.ts'
import { type BenchLog, type BenchRow, listBenchRows, listHolds } from './store/bench-rows.ts'
import { orderCode } from './store/order-rows.ts'
import type { View } from './store/view.ts'
import { versionFacts } from './version-facts.ts'

export type BenchView = z.output<typeof benchWork>

/** Bench work as screens show it, with what it is reckoned to take at this workshop's pace. */
export async function viewBenchRows(
  view: View,
  rows: readonly BenchRow[],
): Promise<readonly BenchView[]> {
  const facts = await versionFacts(
    view,
    rows.map((row) => row.version_id),
  )
  const { learned } = await readLearning(view)
  return rows.flatMap((row) => {
    const known = facts.get(row.version_id)
    if (known === undefined) return []
    const { unitName, labour, outline } = factsAsWorked(known, learned)
    const plannedS = scaleSpread(labour.totalS, row.units)
    return [viewRow(row, { unitName, plannedS, hand: handOf(row, outline) })]
  })
}

function viewRow(
  row: BenchRow,
  known: Pick<BenchView, 'unitName' | 'plannedS' | 'hand'>,
): BenchView {
  return {
    id: row.id,
    designId: row.design_id,
    designName: row.design_name,
    versionId: row.version_id,
    version: row.version,
    colourwayId: row.colourway_id,
    colourwayName: row.colourway_name,
    units: row.units,
    order: orderOf(row),
    begunOn: row.begun_on,
    state: row.state === 'open' ? (row.resting === 1 ? 'resting' : 'begun') : row.state,
    place: placeOf(row),
    unitsDone: row.units_done,
    workedS: row.worked_s,
    keptAtMs: row.kept_at_ms,
    note: row.note,
    finished: finishedOf(row),
    ...known,
  }
}

function placeOf(row: BenchRow): ReaderPlace {
  return { copy: row.copy_at, part: row.part_at, step: row.step_at }
}

function handOf(row: BenchRow, outline: MakeOutline): BenchView['hand'] {
  return row.units_done >= row.units ? null : (handAt(outline, placeOf(row)) ?? null)
}

function orderOf(row: BenchRow): BenchView['order'] {
  const { order_line_id: lineId, order_serial: serial } = row
  if (lineId === null || serial === null) return null
  return {
    lineId,
    code: orderCode(serial),
    customer: row.order_customer ?? '',
    dueOn: row.order_due_on ?? row.begun_on,
  }
}

function finishedOf(row: BenchRow): BenchView['finished'] {
  const { make_id: makeId, made_on: madeOn, made_units: units, log_json } = row
  if (makeId === null || madeOn === null || units === null || log_json === null) return null
  const { beads, massMg, threadMm, seconds } = JSON.parse(log_json) as BenchLog
  const leftOut = row.left_out === 1
  return { makeId, madeOn, units, figures: { beads, massMg, threadMm, seconds }, leftOut }
}

/** Work by its id; refused where there is none. */
export async function getBenchRow(view: View, id: string): Promise<BenchRow> {
  const [row] = await listBenchRows(view, { id })
  if (row !== undefined) return row
  return refuse(
    'not-found',
    `There is no bench work ${id}.`,
    'Choose one from the Bench; it may have been taken back by an undo.',
    'id',
  )
}

/** Work that is under way; refused where it is finished or given up. */
export async function getOpenWork(view: View, id: string): Promise<BenchRow> {
  const row = await getBenchRow(view, id)
  if (row.state === 'open') return row
  return refuse(
    'not-under-way',
    row.state === 'done'
      ? `This work on ${row.design_name} is finished already.`
      : `This work on ${row.design_name} was given up.`,
    'Undo that step to go on with it, or begin another.',
    'id',
  )
}

/** The work as a plan asks for it: it draws from the lots it holds. */
export async function askingWork(view: View, row: BenchRow): Promise<AskingWork> {
  const held = (await listHolds(view)).filter((hold) => hold.workId === row.id)
  const byMaterial = Map.groupBy(held, (hold) => hold.materialId)
  return {
    workId: row.id,
    versionId: row.version_id,
    heldLots: new Map([...byMaterial].map(([id, own]) => [id, own.map(({ lotId }) => lotId)])),
  }
}
