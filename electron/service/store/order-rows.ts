import type { z } from 'zod'
import type { order as orderShape } from '../../../shared-core/contract/order-calls.ts'
import { madeByLine } from '../promises.ts'
import { versionFacts } from '../version-facts.ts'
import type { Row } from './database.ts'
import type { View } from './view.ts'

export type Order = z.output<typeof orderShape>

/** An order's code as people say it: `OR-0012`. */
export function orderCode(serial: number): string {
  return `OR-${String(serial).padStart(4, '0')}`
}

/** Orders with their lines, soonest due first: all, those in a state, or one. */
export async function listOrders(
  view: View,
  which: Readonly<{ state?: 'open'; id?: string }>,
): Promise<Order[]> {
  let query = view.trx.selectFrom('sales_order').selectAll().where('removed_by', 'is', null)
  if (which.state !== undefined) query = query.where('state', '=', which.state)
  if (which.id !== undefined) query = query.where('id', '=', which.id)
  const rows = await query.orderBy('due_on').orderBy('serial').execute()
  const lines = Map.groupBy(await listLines(view, which), (line) => line.order_id)
  const made = await madeByLine(view)
  const facts = await versionFacts(
    view,
    [...lines.values()].flat().map((line) => line.version_id),
  )
  return rows.map((row) => {
    const own = (lines.get(row.id) ?? []).map((line) => ({
      id: line.id,
      designId: line.design_id,
      colourwayId: line.colourway_id,
      units: line.units,
      priceMinor: line.price_minor,
      versionId: line.version_id,
      designName: line.design_name,
      colourwayName: line.colourway_name,
      unitName: facts.get(line.version_id)?.unitName ?? '',
      made: made.get(line.id) ?? 0,
    }))
    return toOrder(row, own)
  })
}

function toOrder(row: Row<'sales_order'>, lines: Order['lines']): Order {
  const allMade = lines.every((line) => line.made >= line.units)
  return {
    id: row.id,
    code: orderCode(row.serial),
    customer: row.customer,
    promisedOn: row.promised_on,
    dueOn: row.due_on,
    note: row.note,
    state: row.state === 'open' && allMade ? 'ready' : row.state,
    lines,
    totalMinor: lines.reduce((sum, line) => sum + line.units * (line.priceMinor ?? 0), 0),
  }
}

function listLines({ trx }: View, which: Readonly<{ state?: 'open'; id?: string }>) {
  let query = trx
    .selectFrom('order_line')
    .innerJoin('sales_order', 'sales_order.id', 'order_line.order_id')
    .innerJoin('design_version', 'design_version.id', 'order_line.version_id')
    .innerJoin('design', 'design.id', 'design_version.design_id')
    .innerJoin('colourway', 'colourway.id', 'order_line.colourway_id')
    .selectAll('order_line')
    .select([
      'design.id as design_id',
      'design.name as design_name',
      'colourway.name as colourway_name',
    ])
    .where('order_line.removed_by', 'is', null)
  if (which.state !== undefined) query = query.where('sales_order.state', '=', which.state)
  if (which.id !== undefined) query = query.where('sales_order.id', '=', which.id)
  return query.orderBy('order_line.position').execute()
}
