import { costSheet } from '../../shared-core/costing/cost-sheet.ts'
import { pieceCode, pieceSeries } from '../../shared-core/pieces/piece-code.ts'
import { overheadOf } from '../../shared-core/pricing/price-sheet.ts'
import { allocate } from '../../shared-core/units/allocate.ts'
import { durationS } from '../../shared-core/units/duration.ts'
import type { MakePlan } from './make-plan.ts'
import type { Act } from './store/act.ts'
import type { View } from './store/view.ts'
import { getWorkshop } from './store/workshop-rows.ts'
import { openValuer } from './valuation.ts'

/** A line that leaves the stock for a make: above 0, in the material's unit. */
export type MakeLine = Readonly<{
  materialId: string
  lotId: string
  quantity: number
  kind: 'made' | 'waste' | 'weighed'
}>

/** The lines of a plan, as it is booked when nothing better is known. */
export function plannedLines({ movements }: Pick<MakePlan, 'movements'>): readonly MakeLine[] {
  return movements.map(({ materialId, lotId, quantity }) => ({
    ...{ materialId, lotId },
    quantity: -quantity,
    kind: 'made',
  }))
}

/** What each line takes out of the value of the stock, from 0 up. */
export async function valuesOf(view: View, lines: readonly MakeLine[]): Promise<readonly number[]> {
  const byMaterial = Map.groupBy(lines, (line) => line.materialId)
  const valuer = await openValuer(view, [...byMaterial.keys()])
  const values = new Map<MakeLine, number>()
  for (const [materialId, own] of byMaterial) {
    const issued = valuer.issue(
      materialId,
      own.map((line) => line.quantity),
    )
    own.forEach((line, at) => {
      values.set(line, issued[at] ?? 0)
    })
  }
  return lines.map((line) => values.get(line) ?? 0)
}

type MakeCost = Readonly<{ values: readonly number[]; units: number; benchS: number }>

/** What all units of a make cost together: what the materials were worth, labour and overhead. */
export async function costOfMake(view: View, { values, units, benchS }: MakeCost) {
  const { hourlyRateMinor, overhead } = await getWorkshop(view.trx)
  const share = overheadOf(overhead)
  const sheet = costSheet({
    materials: [],
    labour: { seconds: durationS(benchS), basis: 'measured' },
    hourlyRateMinor,
    overhead:
      share.kind === 'per-piece' ? { ...share, amountMinor: share.amountMinor * units } : share,
  })
  const materialsMinor = values.reduce((sum, value) => sum + value, 0)
  return {
    materialsMinor,
    labourMinor: sheet.byGroup.labour,
    overheadMinor: sheet.byGroup.overhead,
    costMinor: materialsMinor + sheet.costMinor,
  }
}

/** Finished units of a plan: what leaves the stock for them, how long they took if it was kept, where they go. */
export type FinishedUnits = Readonly<{
  plan: MakePlan
  colourwayId: string
  orderLineId: string | null
  units: number
  lines: readonly MakeLine[]
  benchS: number | undefined
  placeId: string
  madeOn: string
  note: string
}>

/** Enters a make: its materials leave the stock, its pieces with codes and costs reach a place. */
export async function enterMake(act: Act, made: FinishedUnits) {
  const { plan, units, lines } = made
  const benchS = made.benchS ?? Math.round(plan.facts.labour.totalS.value * units)
  const values = await valuesOf(act, lines)
  const cost = await costOfMake(act, { values, units, benchS })
  const makeId = act.newId('make')
  await act.insert('make', {
    id: makeId,
    version_id: plan.versionId,
    colourway_id: made.colourwayId,
    order_line_id: made.orderLineId,
    units,
    made_on: made.madeOn,
    bench_s: made.benchS ?? null,
    note: made.note,
    materials_minor: cost.materialsMinor,
    labour_minor: cost.labourMinor,
    overhead_minor: cost.overheadMinor,
    cost_minor: cost.costMinor,
    left_out: 0,
  })
  for (const [at, { lotId, quantity, kind }] of lines.entries()) {
    await act.append('stock_movement', {
      lot_id: lotId,
      quantity: -quantity,
      value_minor: 0 - (values[at] ?? 0),
      kind,
      make_id: makeId,
      note: '',
    })
  }
  const { costMinor, labourMinor } = cost
  const { placeId } = made
  const pieces = await addPieces(act, plan, {
    ...{ makeId, units, placeId, costMinor, labourMinor, benchS },
  })
  return { makeId, pieces }
}

type NewPieces = Readonly<{
  makeId: string
  units: number
  placeId: string
  costMinor: number
  labourMinor: number
  benchS: number
}>

/** One piece for each unit; the parts of the cost and the time sum to the whole. */
async function addPieces(act: Act, plan: MakePlan, made: NewPieces) {
  const series = pieceSeries(plan.designName)
  const first = (await lastSerial(act, series)) + 1
  const even = Array.from({ length: made.units }, () => 1)
  const costs = allocate(made.costMinor, even)
  const labours = allocate(made.labourMinor, even)
  const seconds = allocate(made.benchS, even)
  const pieces: { id: string; code: string }[] = []
  for (const at of even.keys()) {
    const id = act.newId('pc')
    const code = pieceCode(series, first + at)
    const reserved = plan.orderCode !== null
    await act.insert('piece', {
      id,
      code,
      series,
      serial: first + at,
      make_id: made.makeId,
      cost_minor: costs[at] ?? 0,
      labour_minor: labours[at] ?? 0,
      bench_s: seconds[at] ?? 0,
      state: reserved ? 'reserved' : 'here',
      place_id: made.placeId,
      sale_id: null,
    })
    const step = { piece_id: id, place_id: made.placeId }
    await act.append('piece_movement', { ...step, kind: 'made', note: '' })
    if (reserved) {
      const note = plan.orderCode ?? ''
      await act.append('piece_movement', { ...step, kind: 'reserved', note })
    }
    pieces.push({ id, code })
  }
  return pieces
}

/** Numbers of pieces that were taken back are not given again: their tags may be printed. */
async function lastSerial(act: Act, series: string): Promise<number> {
  const row = await act.trx
    .selectFrom('piece')
    .select(({ fn }) => fn.max('serial').as('serial'))
    .where('series', '=', series)
    .executeTakeFirst()
  return row?.serial ?? 0
}

/** How the history names a make: `Made 4 pairs of Tidewrack for OR-0012`. */
export function madeLabel({ plan, units }: Pick<FinishedUnits, 'plan' | 'units'>): string {
  const unit = units === 1 ? plan.facts.unitName : `${plan.facts.unitName}s`
  const forWhom = plan.orderCode === null ? '' : ` for ${plan.orderCode}`
  return `Made ${units} ${unit} of ${plan.designName}${forWhom}`
}
