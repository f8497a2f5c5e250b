import type { BillLine } from '../../shared-core/design/bill.ts'
import type { Refusal } from '../../shared-core/refusal.ts'
import { byAge, type Lot } from '../../shared-core/stock/lot.ts'
import type { StockMovement } from '../../shared-core/stock/movement.ts'
import { type MakeRefusal, planMake } from '../../shared-core/stock/plan-make.ts'
import { readAvailability } from './availability.ts'
import { type BillBook, openBills, type UnitBill } from './bills.ts'
import { latestMaking } from './price-inputs.ts'
import { madeByLine } from './promises.ts'
import { refuse } from './refused.ts'
import type { Row } from './store/database.ts'
import { getColourwayOf } from './store/design-rows.ts'
import type { VersionFacts } from './store/facts.ts'
import { getRow } from './store/find-row.ts'
import { orderCode } from './store/order-rows.ts'
import type { View } from './store/view.ts'

/** Units to make, of a design in a colourway, for an order's line or for the shelf. */
export type MakeRequest = Readonly<{
  designId: string
  colourwayId: string
  units: number
  orderLineId?: string | undefined
  /** The one lot each of some materials is drawn from. */
  lots?: Readonly<Record<string, string>> | undefined
}>

/** Work at the bench that asks: its version, and the lots it holds by material, which it draws from first. */
export type AskingWork = Readonly<{
  workId: string
  versionId: string
  heldLots: ReadonlyMap<string, readonly string[]>
}>

/** A material with more than one lot, and what of each is free for the make. */
export type LotChoice = Readonly<{
  materialId: string
  name: string
  unit: Row<'material'>['unit']
  needed: number
  lots: readonly Readonly<{ lotId: string; available: number }>[]
}>

/** What making takes out of stock, or why it cannot be made now. */
export type MakePlan = Readonly<{
  designName: string
  colourwayName: string
  versionId: string
  facts: VersionFacts
  orderCode: string | null
  /** Movements below 0, at most one a lot; none where there are faults. */
  movements: readonly StockMovement[]
  faults: readonly Refusal[]
  /** What can be held for it now: the movements, or, where there are faults, those of what is not short. */
  holdable: readonly StockMovement[]
  choices: readonly LotChoice[]
  bill: UnitBill
  lots: ReadonlyMap<string, Pick<Row<'lot'>, 'dye_lot'>>
  materials: BillBook['materials']
}>

/** Plans a make: for an order's line from what the line holds and what is free, else from what is free. */
export async function readMakePlan(
  view: View,
  request: MakeRequest,
  work?: AskingWork,
): Promise<MakePlan> {
  const { design, colourway } = await getColourwayOf(view, request)
  const line = await findLine(view, request)
  const versionId = work?.versionId ?? line?.version_id
  const making =
    versionId === undefined
      ? await latestMaking(view, colourway.id)
      : { versionId, colourwayId: colourway.id }
  const bills = await openBills(view, [making])
  const available = await readAvailability(view)
  const bill = bills.billOf(making)
  const free = available.availableTo({ lineId: line?.id, workId: work?.workId })
  const allowed = await chosenOf(view, free, request.lots)
  const plan = planFrom(bill, heldOf(allowed, request.lots, work), allowed, request.units)
  const choices = listChoices(bill, free, request.units, bills)
  const lots = await readLots(view, [
    ...(plan.ok ? plan.value : []),
    ...choices.flatMap((choice) => choice.lots),
  ])
  return {
    designName: design.name,
    colourwayName: colourway.name,
    versionId: making.versionId,
    facts: bills.factsOf(making.versionId),
    orderCode: line === undefined ? null : line.code,
    movements: plan.ok ? plan.value : [],
    faults: plan.ok ? [] : wordFaults(plan.error, bill.lines, bills, request.units),
    holdable: plan.ok ? plan.value : planRest(bill, plan.error, allowed, request.units),
    choices,
    bill,
    lots,
    materials: bills.materials,
  }
}

/** The plan from the lots held already, else from all that are allowed. */
function planFrom(bill: UnitBill, held: readonly Lot[], allowed: readonly Lot[], units: number) {
  const fromHeld = planMake(bill.lines, held, units)
  return fromHeld.ok ? fromHeld : planMake(bill.lines, allowed, units)
}

/** Of materials that the work holds, the held lots alone, unless the maker has chosen another now. */
function heldOf(
  allowed: readonly Lot[],
  chosen: MakeRequest['lots'] = {},
  work?: AskingWork,
): readonly Lot[] {
  if (work === undefined) return allowed
  return allowed.filter(({ materialId, lotId }) => {
    const held = chosen[materialId] === undefined ? work.heldLots.get(materialId) : undefined
    return held?.includes(lotId) ?? true
  })
}

/** What of a make that cannot be finished now could be held for it: all but what is short or not chosen. */
function planRest(
  bill: UnitBill,
  fault: MakeRefusal,
  allowed: readonly Lot[],
  units: number,
): readonly StockMovement[] {
  const assigned = bill.lines.filter((line) => line.material !== undefined)
  const asked = fault.kind === 'short' ? fault : undefined
  const short = new Set(asked?.shortages.map(({ materialId }) => materialId))
  const rest = assigned.filter((line) => !short.has(line.material?.materialId ?? ''))
  const plan = planMake(rest, allowed, units)
  if (plan.ok) return plan.value
  return asked === undefined ? planRest({ ...bill, lines: rest }, plan.error, allowed, units) : []
}

/** Lots to plan from: where the maker has chosen one of a material, that one alone. */
async function chosenOf(
  { trx }: View,
  free: readonly Lot[],
  chosen: MakeRequest['lots'] = {},
): Promise<readonly Lot[]> {
  for (const [materialId, lotId] of Object.entries(chosen)) {
    const lot = await getRow(trx, 'lot', lotId, `lots.${materialId}`)
    if (lot.material_id === materialId) continue
    refuse(
      'lot-of-another-material',
      'The lot chosen is of another material.',
      'Choose one of the material’s own lots.',
      `lots.${materialId}`,
    )
  }
  return free.filter(({ materialId, lotId }) => (chosen[materialId] ?? lotId) === lotId)
}

/** Materials with more than one lot that has some left. */
function listChoices(
  { needs }: UnitBill,
  free: readonly Lot[],
  units: number,
  { materials }: BillBook,
): readonly LotChoice[] {
  return needs.flatMap(({ materialId, unit, quantity }) => {
    const lots = free
      .filter((lot) => lot.materialId === materialId && lot.onHand > 0)
      .toSorted(byAge)
      .map(({ lotId, onHand }) => ({ lotId, available: onHand }))
    const name = materials.get(materialId)?.name ?? ''
    return lots.length > 1 ? [{ materialId, name, unit, needed: units * quantity, lots }] : []
  })
}

async function readLots(
  { trx }: View,
  movements: readonly Readonly<{ lotId: string }>[],
): Promise<MakePlan['lots']> {
  const ids = [...new Set(movements.map((movement) => movement.lotId))]
  if (ids.length === 0) return new Map()
  const rows = await trx
    .selectFrom('lot')
    .select(['id', 'dye_lot'])
    .where('id', 'in', ids)
    .execute()
  return new Map(rows.map((row) => [row.id, row]))
}

async function findLine(view: View, request: MakeRequest) {
  if (request.orderLineId === undefined) return undefined
  const line = await getRow(view.trx, 'order_line', request.orderLineId, 'orderLineId')
  const order = await getRow(view.trx, 'sales_order', line.order_id)
  const code = orderCode(order.serial)
  if (line.colourway_id !== request.colourwayId) {
    refuse(
      'line-of-another-design',
      `The line of order ${code} is for another design or colourway.`,
      'Choose the line that this make is for, or make it for the shelf.',
      'orderLineId',
    )
  }
  if (order.state !== 'open') {
    refuse(
      'order-not-open',
      `Order ${code} is ${order.state}.`,
      'Reopen it first, or make for the shelf.',
      'orderLineId',
    )
  }
  const left = line.units - ((await madeByLine(view)).get(line.id) ?? 0)
  if (request.units > left) {
    refuse(
      'more-than-ordered',
      `Order ${code} still needs ${left}, and ${request.units} were given.`,
      `Log ${left} for the order, and the rest for the shelf.`,
      'units',
    )
  }
  return { ...line, code }
}

function wordFaults(
  fault: MakeRefusal,
  bill: readonly BillLine[],
  bills: BillBook,
  units: number,
): readonly Refusal[] {
  switch (fault.kind) {
    case 'unassigned':
      return fault.keys.map((key) => ({
        code: 'not-assigned',
        message: `No material is chosen for ${bill.find((line) => line.key === key)?.name ?? key}.`,
        next: 'Choose one in the design’s colourway.',
        field: key,
      }))
    case 'short':
      return fault.shortages.map(({ materialId, units: possible }) => ({
        code: 'not-enough-stock',
        message: `${bills.materials.get(materialId)?.name ?? 'A material'} is enough for ${possible} of ${units}, beside what is promised to others.`,
        next:
          fault.units > 0
            ? `Make ${fault.units}, or take in what is missing.`
            : 'Take in what is missing, or count the lot if there is more than the books say.',
        field: materialId,
      }))
  }
}
