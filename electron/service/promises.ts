import type { CoverLine } from '../../shared-core/stock/cover.ts'
import { needsPerUnit, unassignedKeys } from '../../shared-core/stock/material-need.ts'
import { calendarDate } from '../../shared-core/units/calendar-date.ts'
import { type BillBook, openBills } from './bills.ts'
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
export async function listOpenLines({ trx }: View): Promise<OpenLine[]> {
  const rows = await trx
    .selectFrom('sales_order')
    .innerJoin('order_line', 'order_line.order_id', 'sales_order.id')
    .select([
      'order_line.id as lineId',
      'sales_order.id as orderId',
      'order_line.version_id as versionId',
      'order_line.colourway_id as colourwayId',
      'order_line.units as units',
      'sales_order.due_on as dueOn',
      'sales_order.promised_on as promisedOn',
      'sales_order.serial as serial',
      'order_line.position as position',
    ])
    .where('sales_order.state', '=', 'open')
    .where('sales_order.removed_by', 'is', null)
    .where('order_line.removed_by', 'is', null)
    .orderBy('sales_order.serial')
    .orderBy('order_line.position')
    .execute()
  const made = await madeByLine({ trx })
  return rows.map((row) => ({ ...row, made: made.get(row.lineId) ?? 0 }))
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

/** A promise with what it still needs; `entry` numbers the promises in the order they were given. */
export function toCoverLine(line: OpenLine, bills: BillBook, entry: number): CoverLine {
  const bill = bills.billOf(line)
  return {
    lineId: line.lineId,
    // Who was promised first is served first: a later order for an earlier day takes nothing away.
    dueOn: calendarDate(line.promisedOn),
    entry,
    units: Math.max(0, line.units - line.made),
    needs: needsPerUnit(bill),
    unassigned: unassignedKeys(bill),
  }
}

/** What open orders still need of each material, in its unit: need of every unit not yet made. */
export async function reservedByMaterial(view: View): Promise<ReadonlyMap<string, number>> {
  const { lines, bills } = await readPromises(view)
  const reserved = new Map<string, number>()
  for (const [entry, line] of lines.entries()) {
    const { units, needs } = toCoverLine(line, bills, entry)
    for (const { materialId, quantity } of needs) {
      reserved.set(materialId, (reserved.get(materialId) ?? 0) + units * quantity)
    }
  }
  return reserved
}
