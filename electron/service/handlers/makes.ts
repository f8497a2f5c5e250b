import { costSheet } from '../../../shared-core/costing/cost-sheet.ts'
import { pieceCode, pieceSeries } from '../../../shared-core/pieces/piece-code.ts'
import { overheadOf } from '../../../shared-core/pricing/price-sheet.ts'
import { allocate } from '../../../shared-core/units/allocate.ts'
import { durationS } from '../../../shared-core/units/duration.ts'
import { scaleSpread } from '../../../shared-core/units/spread-arithmetic.ts'
import { type MakePlan, readMakePlan } from '../make-plan.ts'
import { Refused } from '../refused.ts'
import type { Act } from '../store/act.ts'
import { getRow } from '../store/find-row.ts'
import type { View } from '../store/view.ts'
import { getWorkshop } from '../store/workshop-rows.ts'
import { openValuer } from '../valuation.ts'
import type { ActHandler, QueryHandler } from './handler.ts'

export const planMakeCall: QueryHandler<'makes.plan'> = async (reading, input) => {
  const plan = await readMakePlan(reading, input)
  const labourS = scaleSpread(plan.facts.labour.totalS, input.units)
  const values = await drawValues(reading, plan)
  const cost = await costOfMake(reading, {
    values,
    units: input.units,
    benchS: Math.round(labourS.value),
  })
  return {
    draws: plan.movements.flatMap(({ lotId, materialId, quantity }) => {
      const lot = plan.lots.get(lotId)
      const material = plan.materials.get(materialId)
      if (lot === undefined || material === undefined) return []
      return {
        materialId,
        name: material.name,
        lotId,
        dyeLot: lot.dye_lot,
        drawer: material.drawer,
        unit: material.unit,
        quantity: -quantity,
      }
    }),
    costMinor: cost.costMinor,
    labourS,
    faults: [...plan.faults],
  }
}

/** What each movement of a plan takes out of the value of the stock, from 0 up. */
async function drawValues(view: View, { movements }: MakePlan): Promise<readonly number[]> {
  const byMaterial = Map.groupBy(movements, (movement) => movement.materialId)
  const valuer = await openValuer(view, [...byMaterial.keys()])
  const values = new Map<(typeof movements)[number], number>()
  for (const [materialId, own] of byMaterial) {
    const issued = valuer.issue(
      materialId,
      own.map((movement) => -movement.quantity),
    )
    own.forEach((movement, at) => {
      values.set(movement, issued[at] ?? 0)
    })
  }
  return movements.map((movement) => values.get(movement) ?? 0)
}

type MakeCost = Readonly<{ values: readonly number[]; units: number; benchS: number }>

/** What all units of a make cost together: what the materials were worth, labour and overhead. */
async function costOfMake(view: View, { values, units, benchS }: MakeCost) {
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

export const finishMake: ActHandler<'makes.finish'> = async (act, input) => {
  const place = await getRow(act.trx, 'place', input.placeId, 'placeId')
  const plan = await readMakePlan(act, input)
  const [fault] = plan.faults
  if (fault !== undefined) throw new Refused(fault)
  const benchS = input.benchS ?? Math.round(plan.facts.labour.totalS.value * input.units)
  const values = await drawValues(act, plan)
  const cost = await costOfMake(act, { values, units: input.units, benchS })
  const makeId = act.newId('make')
  await act.insert('make', {
    id: makeId,
    version_id: plan.versionId,
    colourway_id: input.colourwayId,
    order_line_id: input.orderLineId ?? null,
    units: input.units,
    made_on: input.madeOn,
    bench_s: input.benchS ?? null,
    note: input.note,
    materials_minor: cost.materialsMinor,
    labour_minor: cost.labourMinor,
    overhead_minor: cost.overheadMinor,
    cost_minor: cost.costMinor,
  })
  for (const [at, { lotId, quantity }] of plan.movements.entries()) {
    await act.append('stock_movement', {
      lot_id: lotId,
      quantity,
      value_minor: 0 - (values[at] ?? 0),
      kind: 'made',
      make_id: makeId,
      note: '',
    })
  }
  const pieces = await addPieces(act, plan, {
    makeId,
    units: input.units,
    placeId: place.id,
    costMinor: cost.costMinor,
    labourMinor: cost.labourMinor,
    benchS,
  })
  const unit = input.units === 1 ? plan.facts.unitName : `${plan.facts.unitName}s`
  const forWhom = plan.orderCode === null ? '' : ` for ${plan.orderCode}`
  return {
    value: { makeId, pieces },
    label: `Made ${input.units} ${unit} of ${plan.designName}${forWhom}`,
  }
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
