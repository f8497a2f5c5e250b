import type { BillLine } from '../../shared-core/design/bill.ts'
import type { Refusal } from '../../shared-core/refusal.ts'
import type { StockMovement } from '../../shared-core/stock/movement.ts'
import { type MakeRefusal, planMake } from '../../shared-core/stock/plan-make.ts'
import { readAvailability } from './availability.ts'
import { type BillBook, openBills } from './bills.ts'
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
  lots: ReadonlyMap<string, Pick<Row<'lot'>, 'dye_lot'>>
  materials: BillBook['materials']
}>

/** Plans a make: for an order's line from what the line holds and what is free, else from what is free. */
export async function readMakePlan(view: View, request: MakeRequest): Promise<MakePlan> {
  const { design, colourway } = await getColourwayOf(view, request)
  const line = await findLine(view, request)
  const making =
    line === undefined
      ? await latestMaking(view, colourway.id)
      : { versionId: line.version_id, colourwayId: colourway.id }
  const bills = await openBills(view, [making])
  const available = await readAvailability(view)
  const bill = bills.billOf(making)
  const plan = planMake(bill.lines, available.availableTo(line?.id), request.units)
  return {
    designName: design.name,
    colourwayName: colourway.name,
    versionId: making.versionId,
    facts: bills.factsOf(making.versionId),
    orderCode: line === undefined ? null : line.code,
    movements: plan.ok ? plan.value : [],
    faults: plan.ok ? [] : wordFaults(plan.error, bill.lines, bills, request.units),
    lots: await readLots(view, plan.ok ? plan.value : []),
    materials: bills.materials,
  }
}

async function readLots(
  { trx }: View,
  movements: readonly StockMovement[],
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
