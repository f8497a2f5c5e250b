import type { CoverLine } from '../../shared-core/stock/cover.ts'
import type { Reservation } from '../../shared-core/stock/reservation.ts'
import { type CalendarDate, calendarDate } from '../../shared-core/units/calendar-date.ts'
import { type BillBook, openBills } from './bills.ts'
import { type Hold, listHolds } from './store/bench-rows.ts'
import type { View } from './store/view.ts'

/** A line of an open order as the store has it, with what is made of it. */
export type OpenLine = Readonly<{
  lineId: string
  orderId: string
  versionId: string
  colourwayId: string
  units: number
  made: number
  dueOn: string
  promisedOn: string
  serial: number
  position: number
}>

/** Lines of open orders, in the order they were entered. */
export function listOpenLines({ trx }: Pick<View, 'trx'>): Promise<OpenLine[]> {
  const made = trx
    .selectFrom('make')
    .select(({ fn }) => ['order_line_id', fn.sum<number>('units').as('units')])
    .where('order_line_id', 'is not', null)
    .where('removed_by', 'is', null)
    .groupBy('order_line_id')
    .as('made')
  return trx
    .selectFrom('sales_order')
    .innerJoin('order_line', 'order_line.order_id', 'sales_order.id')
    .leftJoin(made, 'made.order_line_id', 'order_line.id')
    .select(({ fn, val }) => [
      'order_line.id as lineId',
      'sales_order.id as orderId',
      'order_line.version_id as versionId',
      'order_line.colourway_id as colourwayId',
      'order_line.units as units',
      'sales_order.due_on as dueOn',
      'sales_order.promised_on as promisedOn',
      'sales_order.serial as serial',
      'order_line.position as position',
      fn.coalesce('made.units', val(0)).as('made'),
    ])
    .where('sales_order.state', '=', 'open')
    .where('sales_order.removed_by', 'is', null)
    .where('order_line.removed_by', 'is', null)
    .orderBy('sales_order.serial')
    .orderBy('order_line.position')
    .execute()
}

/** Units made for each order line that has any. */
export async function madeByLine({ trx }: Pick<View, 'trx'>): Promise<ReadonlyMap<string, number>> {
  const rows = await trx
    .selectFrom('make')
    .select(({ fn }) => ['order_line_id', fn.sum<number>('units').as('units')])
    .where('order_line_id', 'is not', null)
    .where('removed_by', 'is', null)
    .groupBy('order_line_id')
    .execute()
  return new Map(rows.map((row) => [row.order_line_id ?? '', Number(row.units)]))
}

/** Open promises as the core covers them, and the book their bills stand in. */
export type Promises = Readonly<{ lines: readonly OpenLine[]; bills: BillBook }>

/** Reads all open promises. */
export async function readPromises(view: View): Promise<Promises> {
  const lines = await listOpenLines(view)
  return { lines, bills: await openBills(view, lines) }
}

/** Promises, in the order they were entered, with what each still needs. */
export function toCoverLines(lines: readonly OpenLine[], bills: BillBook): CoverLine[] {
  const days = new Map<string, CalendarDate>()
  return lines.map((line, entry) => {
    const { needs, unassigned } = bills.billOf(line)
    // Who was promised first is served first: a later order for an earlier day takes nothing away.
    const dueOn = days.get(line.promisedOn) ?? calendarDate(line.promisedOn)
    days.set(line.promisedOn, dueOn)
    const units = Math.max(0, line.units - line.made)
    return { lineId: line.lineId, dueOn, entry, units, needs, unassigned }
  })
}

/** Holds as the core reserves: for the line the work is for, or outside the orders. */
export function toReservations(holds: readonly Hold[]): readonly Reservation[] {
  return holds.map(({ materialId, lotId, quantity, lineId }) => ({
    materialId,
    lotId,
    quantity,
    ...(lineId === null ? {} : { lineId }),
  }))
}

/**
 * What is spoken for of each material, in its unit: the need of every promised unit not yet made, and
 * what work for the shelf holds.
 */
export async function reservedByMaterial(view: View): Promise<ReadonlyMap<string, number>> {
  const { lines, bills } = await readPromises(view)
  const reserved = new Map<string, number>()
  for (const { units, needs } of toCoverLines(lines, bills)) {
    for (const { materialId, quantity } of needs) {
      reserved.set(materialId, (reserved.get(materialId) ?? 0) + units * quantity)
    }
  }
  for (const { materialId, quantity, lineId } of await listHolds(view)) {
    // Work for an order is a part of what the order still needs.
    if (lineId === null) reserved.set(materialId, (reserved.get(materialId) ?? 0) + quantity)
  }
  return reserved
}
