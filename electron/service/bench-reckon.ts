import type { ParsedInput } from '../../shared-core/contract/calls.ts'
import type { Refusal } from '../../shared-core/refusal.ts'
import { bookUse } from '../../shared-core/stock/book-use.ts'
import { readWorkBeads, type WorkBead } from './bench-beads.ts'
import { type BeadFind, findBead, weightFaults } from './bench-finds.ts'
import { askingWork, getOpenWork } from './bench-work.ts'
import { type MakeLine, plannedLines } from './enter-make.ts'
import { formatQuantity } from './format-quantity.ts'
import { type MakePlan, readMakePlan } from './make-plan.ts'
import { refuse } from './refused.ts'
import type { BenchLog, BenchRow } from './store/bench-rows.ts'
import { listLots } from './store/material-rows.ts'
import type { View } from './store/view.ts'
import { getWorkshop } from './store/workshop-rows.ts'
import { factsOf } from './version-facts.ts'

export type FinishInput = ParsedInput<'bench.reckon'>

/** What finishing some work comes to: the lines it books, planned against actual, and what stands in the way. */
export type Reckoning = Readonly<{
  work: BenchRow
  /** The line it is made for; null for the shelf, also where the order is no longer open. */
  orderLineId: string | null
  plan: MakePlan
  lines: readonly MakeLine[]
  finds: readonly BeadFind[]
  log: BenchLog
  faults: readonly Refusal[]
}>

/** Reckons the finishing of work from what was weighed and counted; writes nothing. */
export async function reckonFinish(view: View, input: FinishInput): Promise<Reckoning> {
  const work = await getOpenWork(view, input.id)
  if (input.units > work.units) {
    refuse(
      'more-than-begun',
      `${work.units} were begun, and ${input.units} were given.`,
      `Finish ${work.units} here, and log the rest as a make.`,
      'units',
    )
  }
  const orderLineId = await openLineOf(view, work)
  const plan = await readMakePlan(
    view,
    {
      designId: work.design_id,
      colourwayId: work.colourway_id,
      units: input.units,
      lots: input.lots,
      orderLineId: orderLineId ?? undefined,
    },
    await askingWork(view, work),
  )
  const beads = await readWorkBeads(view, plan)
  const finds = beads.map((bead) => findBead(bead, input))
  const lines = book(plan, finds)
  const log = await writeLog(view, { work, plan, beads, finds, input })
  const faults = [
    ...plan.faults,
    ...(await weightFaults(view, beads, input)),
    ...(await beyondBooks(view, plan, lines)),
    ...threadFaults(plan, input),
  ]
  return { work, orderLineId, plan, lines, finds, log, faults }
}

/** The work's order line while its order is open; finished later, the pieces are for the shelf. */
async function openLineOf({ trx }: View, work: BenchRow): Promise<string | null> {
  if (work.order_line_id === null) return null
  const line = await trx
    .selectFrom('order_line')
    .innerJoin('sales_order', 'sales_order.id', 'order_line.order_id')
    .select('order_line.id')
    .where('order_line.id', '=', work.order_line_id)
    .where('order_line.removed_by', 'is', null)
    .where('sales_order.state', '=', 'open')
    .executeTakeFirst()
  return line?.id ?? null
}

function book(plan: MakePlan, finds: readonly BeadFind[]): readonly MakeLine[] {
  const found = new Map(finds.map((find) => [find.materialId, find]))
  const planned = Map.groupBy(plannedLines(plan), (line) => line.materialId)
  return [...planned].flatMap(([materialId, draws]) => {
    const find = found.get(materialId)
    return find === undefined
      ? draws
      : bookUse(draws, find.use).map((line) => ({ materialId, ...line }))
  })
}

/** More than the books hold of a lot cannot leave it. */
async function beyondBooks(
  view: View,
  { materials }: MakePlan,
  lines: readonly MakeLine[],
): Promise<readonly Refusal[]> {
  if (lines.length === 0) return []
  const { decimalMark } = await getWorkshop(view.trx)
  const lots = await listLots(view.trx, [...new Set(lines.map((line) => line.materialId))])
  return lots.flatMap((lot) => {
    const out = lines
      .filter((line) => line.lotId === lot.id)
      .reduce((sum, line) => sum + line.quantity, 0)
    const material = materials.get(lot.material_id)
    if (out <= lot.on_hand || material === undefined) return []
    const amount = (quantity: number) => formatQuantity(quantity, material.unit, decimalMark)
    return [
      {
        code: 'more-than-on-hand',
        message: `${amount(out)} of ${material.name} would leave a lot of which the books hold ${amount(lot.on_hand)}.`,
        next: 'Check the two weights, or count the lot in Stock first.',
        field: lot.material_id,
      },
    ]
  })
}

function threadFaults(plan: MakePlan, { threadLeftMm, units }: FinishInput): readonly Refusal[] {
  if (threadLeftMm === undefined || threadLeftMm < plan.facts.thread.spoolMm.value * units)
    return []
  return [
    {
      code: 'more-left-than-cut',
      message: 'More thread is left over than was cut for these pieces.',
      next: 'Measure the ends again, or leave the field empty.',
      field: 'threadLeftMm',
    },
  ]
}

type Found = Readonly<{
  work: BenchRow
  plan: MakePlan
  beads: readonly WorkBead[]
  finds: readonly BeadFind[]
  input: FinishInput
}>

async function writeLog(view: View, found: Found): Promise<BenchLog> {
  const { work, plan, beads, finds, input } = found
  const { units, threadLeftMm, benchS } = input
  const { thread, labour } = plan.facts
  const usedMm = threadLeftMm === undefined ? null : thread.spoolMm.value * units - threadLeftMm
  // Learnt against what the tables reckon, not against what was learnt before.
  const table = await factsOf(view, work.version_id)
  return {
    beads: {
      planned: sum(beads.map((bead) => bead.withCulls(units * countOf(bead)))),
      actual: sumKnown(finds.map((find) => find.handled)),
    },
    massMg: {
      planned: sum(finds.map((find) => (find.unit === 'mg' ? plannedOf(plan, find) : 0))),
      actual: sumKnown(finds.filter(({ unit }) => unit === 'mg').map((find) => find.whole)),
    },
    threadMm: { planned: Math.round(thread.inPieceMm.value * units), actual: usedMm },
    seconds: { planned: Math.round(labour.totalS.value * units), actual: benchS ?? null },
    thread:
      usedMm === null || usedMm <= 0
        ? null
        : { usedMm, reckonedMm: Math.round(table.thread.inPieceMm.value * units) },
    culls: finds.flatMap((find) => find.culls),
  }
}

/** What a plan draws of a bead's material. */
export function plannedOf(plan: MakePlan, { materialId }: Pick<BeadFind, 'materialId'>): number {
  return sum(
    plannedLines(plan)
      .filter((line) => line.materialId === materialId)
      .map((line) => line.quantity),
  )
}

function countOf({ slots }: WorkBead): number {
  return sum(slots.map((slot) => slot.count))
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0)
}

/** The sum where every part is known; nothing where one is not, or there is none. */
function sumKnown(values: readonly (number | null)[]): number | null {
  const known = values.filter((value) => value !== null)
  return known.length === values.length && known.length > 0 ? sum(known) : null
}
