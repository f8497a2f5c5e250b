import { readWorkBeads } from '../bench-beads.ts'
import { plannedOf, reckonFinish } from '../bench-reckon.ts'
import { askingWork, getBenchRow, getOpenWork, viewBenchRows } from '../bench-work.ts'
import { costOfMake, enterMake, madeLabel, plannedLines, valuesOf } from '../enter-make.ts'
import { readMakePlan } from '../make-plan.ts'
import { madeByLine } from '../promises.ts'
import { Refused, refuse } from '../refused.ts'
import { listBenchRows, listHolds, underWayByLine } from '../store/bench-rows.ts'
import { readBody } from '../store/design-rows.ts'
import { getRow } from '../store/find-row.ts'
import type { View } from '../store/view.ts'
import type { ActHandler, QueryHandler } from './handler.ts'
import { viewLines } from './makes.ts'

export const beginBench: ActHandler<'bench.begin'> = async (act, input) => {
  const { begunOn, before, ...request } = input
  await refuseTwice(act, input)
  for (const materialId of Object.keys(before)) {
    await getRow(act.trx, 'material', materialId, `before.${materialId}`)
  }
  const plan = await readMakePlan(act, request)
  const id = act.newId('bw')
  await act.insert('bench_work', {
    id,
    version_id: plan.versionId,
    colourway_id: input.colourwayId,
    order_line_id: input.orderLineId ?? null,
    units: input.units,
    begun_on: begunOn,
    before_json: JSON.stringify(before),
    ...{ copy_at: 0, part_at: 0, step_at: 0, units_done: 0, worked_s: 0, resting: 0 },
    kept_at_ms: act.atMs,
    state: 'open',
    make_id: null,
    log_json: null,
    note: '',
  })
  for (const { materialId, lotId, quantity } of plan.holdable) {
    await act.insert('bench_hold', {
      id: act.newId('hold'),
      work_id: id,
      material_id: materialId,
      lot_id: lotId,
      quantity: -quantity,
    })
  }
  const unit = input.units === 1 ? plan.facts.unitName : `${plan.facts.unitName}s`
  const forWhom = plan.orderCode === null ? '' : ` for ${plan.orderCode}`
  return { value: { id }, label: `Began ${input.units} ${unit} of ${plan.designName}${forWhom}` }
}

/** The same promised pieces are not begun twice. */
async function refuseTwice(
  view: View,
  { orderLineId, units }: Readonly<{ orderLineId?: string | undefined; units: number }>,
): Promise<void> {
  if (orderLineId === undefined) return
  const line = await getRow(view.trx, 'order_line', orderLineId, 'orderLineId')
  const made = (await madeByLine(view)).get(line.id) ?? 0
  const begun = (await underWayByLine(view)).get(line.id) ?? 0
  const left = line.units - made - begun
  if (begun === 0 || units <= left) return
  refuse(
    'begun-already',
    `${begun} of this line are at the bench already, and ${Math.max(0, left)} are left to begin.`,
    'Go on with the work that is under way, or begin fewer.',
    'units',
  )
}

export const listBench: QueryHandler<'bench.list'> = async (reading, { state }) => {
  const states = state === 'under-way' ? (['open'] as const) : (['done'] as const)
  return { works: [...(await viewBenchRows(reading, await listBenchRows(reading, { states })))] }
}

export const readBench: QueryHandler<'bench.read'> = async (reading, { id }) => {
  const row = await getBenchRow(reading, id)
  const [work] = await viewBenchRows(reading, [row])
  if (work === undefined) throw new Error(`expected facts of version ${row.version_id}`)
  const request = { designId: row.design_id, colourwayId: row.colourway_id, units: row.units }
  const plan = await readMakePlan(reading, request, await askingWork(reading, row))
  const held = (await listHolds(reading)).filter((hold) => hold.workId === id)
  const dyeLots = await dyeLotsOf(reading, held)
  const before = JSON.parse(row.before_json) as Readonly<Record<string, number>>
  const beads = await readWorkBeads(reading, plan)
  return {
    work,
    body: (await readBody(reading, row.version_id)) as MutableBody,
    fillings: await readFillings(reading, row.colourway_id),
    held: inDrawerOrder(
      held.flatMap(({ materialId, lotId, quantity }) => {
        const material = plan.materials.get(materialId)
        if (material === undefined) return []
        const { name, drawer, unit } = material
        return [
          { materialId, name, lotId, dyeLot: dyeLots.get(lotId) ?? '', drawer, unit, quantity },
        ]
      }),
    ),
    beads: await Promise.all(
      beads.map(async ({ materialId, unit, slots }) => {
        const row = await getRow(reading.trx, 'material', materialId)
        return {
          materialId,
          name: row.name,
          unit,
          tareMg: row.tare_mg,
          beforeMg: before[materialId] ?? null,
          slots: slots.map(({ label, name, count }) => ({ label, name, count })),
        }
      }),
    ),
  }
}

/** As they are fetched: drawer by drawer, then by name. */
function inDrawerOrder<D extends Readonly<{ drawer: string; name: string; lotId: string }>>(
  draws: D[],
): D[] {
  const key = ({ drawer, name, lotId }: D) => `${drawer}\n${name}\n${lotId}`
  return draws.toSorted((a, b) => (key(a) < key(b) ? -1 : 1))
}

/** The contract's shape of a body: the same, but its lists may be changed. */
type MutableBody = Awaited<ReturnType<QueryHandler<'bench.read'>>>['body']

async function dyeLotsOf(
  { trx }: View,
  held: readonly Readonly<{ lotId: string }>[],
): Promise<ReadonlyMap<string, string>> {
  const ids = held.map(({ lotId }) => lotId)
  if (ids.length === 0) return new Map()
  const rows = await trx
    .selectFrom('lot')
    .select(['id', 'dye_lot'])
    .where('id', 'in', ids)
    .execute()
  return new Map(rows.map((row) => [row.id, row.dye_lot]))
}

async function readFillings({ trx }: View, colourwayId: string): Promise<Record<string, string>> {
  const rows = await trx
    .selectFrom('colourway_material')
    .select(['key', 'material_id'])
    .where('colourway_id', '=', colourwayId)
    .where('removed_by', 'is', null)
    .execute()
  return Object.fromEntries(rows.map((row) => [row.key, row.material_id]))
}

export const reckonBench: QueryHandler<'bench.reckon'> = async (reading, input) => {
  const { plan, lines, finds, log, faults } = await reckonFinish(reading, input)
  const { beads, massMg, threadMm, seconds } = log
  const { units } = input
  const cost = async (of: typeof lines, benchS: number) =>
    (await costOfMake(reading, { values: await valuesOf(reading, of), units, benchS })).costMinor
  const isBookable = faults.length === 0
  return {
    lines: viewLines(plan, lines),
    materials: finds.map((find) => ({
      materialId: find.materialId,
      name: plan.materials.get(find.materialId)?.name ?? '',
      unit: find.unit,
      planned: plannedOf(plan, find),
      actual: find.whole,
    })),
    figures: { beads, massMg, threadMm, seconds },
    costMinor: isBookable ? await cost(lines, input.benchS ?? seconds.planned) : 0,
    plannedCostMinor: isBookable ? await cost(plannedLines(plan), seconds.planned) : 0,
    faults: [...faults],
  }
}

export const finishBench: ActHandler<'bench.finish'> = async (act, input) => {
  const { placeId, madeOn, note, ...request } = input
  const place = await getRow(act.trx, 'place', placeId, 'placeId')
  const { work, orderLineId, plan, lines, log, faults } = await reckonFinish(act, request)
  const [fault] = faults
  if (fault !== undefined) throw new Refused(fault)
  const { units, benchS } = input
  const value = await enterMake(act, {
    ...{ plan, orderLineId, units, lines, benchS, madeOn, note },
    colourwayId: work.colourway_id,
    placeId: place.id,
  })
  await act.update('bench_work', work.id, {
    state: 'done',
    make_id: value.makeId,
    log_json: JSON.stringify(log),
    note,
  })
  return { value, label: madeLabel({ plan, units }) }
}

export const giveUpBench: ActHandler<'bench.giveUp'> = async (act, { id, note }) => {
  const work = await getOpenWork(act, id)
  await act.update('bench_work', work.id, { state: 'given-up', note })
  return { value: {}, label: `Gave up the work on ${work.design_name}` }
}
