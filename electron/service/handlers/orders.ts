import type { z } from 'zod'
import type { orderInput } from '../../../shared-core/contract/order-calls.ts'
import { refuse } from '../refused.ts'
import type { Act } from '../store/act.ts'
import type { Row } from '../store/database.ts'
import { getColourwayOf, getLatestVersion } from '../store/design-rows.ts'
import { getRow } from '../store/find-row.ts'
import { listOrders, type Order, orderCode } from '../store/order-rows.ts'
import { getWorkshop } from '../store/workshop-rows.ts'
import type { ActHandler, QueryHandler } from './handler.ts'

export type OrderInput = z.output<typeof orderInput>

export const listOrderViews: QueryHandler<'orders.list'> = async (reading, { state }) => ({
  orders: await listOrders(reading, state === 'open' ? { state } : {}),
})

export const readOrder: QueryHandler<'orders.read'> = async (reading, { id }) => {
  await getRow(reading.trx, 'sales_order', id)
  const [order] = await listOrders(reading, { id })
  if (order === undefined) throw new Error(`expected order ${id}`)
  return { order }
}

export const saveOrder: ActHandler<'orders.save'> = async (act, input) => {
  await getWorkshop(act.trx)
  checkDates(input.order)
  return input.id === undefined
    ? enterOrder(act, input.order)
    : changeOrder(act, input.id, input.order)
}

/** Refuses an order that is due before it was promised. */
export function checkDates({ promisedOn, dueOn }: OrderInput, field = 'order.dueOn'): void {
  if (dueOn >= promisedOn) return
  refuse(
    'due-before-promise',
    `The order is due on ${dueOn}, before ${promisedOn} when it was promised.`,
    'Give a due date on or after the day of the promise.',
    field,
  )
}

function orderColumns({ customer, promisedOn, dueOn, note }: OrderInput) {
  return { customer, promised_on: promisedOn, due_on: dueOn, note }
}

async function enterOrder(act: Act, order: OrderInput) {
  const id = act.newId('ord')
  // Numbers of orders that were taken back are not given again: they may stand on paper.
  const last = await act.trx
    .selectFrom('sales_order')
    .select(({ fn }) => fn.max('serial').as('serial'))
    .executeTakeFirst()
  const serial = (last?.serial ?? 0) + 1
  await act.insert('sales_order', { id, serial, ...orderColumns(order), state: 'open' })
  for (const [at, line] of order.lines.entries()) await addLine(act, id, line, at)
  const code = orderCode(serial)
  return { value: { id, code }, label: `Entered order ${code} for ${order.customer}` }
}

type Line = OrderInput['lines'][number]

async function addLine(act: Act, orderId: string, line: Line, at: number): Promise<void> {
  if (line.id !== undefined) {
    refuse(
      'unknown-line',
      `The order has no line ${line.id}.`,
      'Leave the id of a new line out.',
      `order.lines.${at}.id`,
    )
  }
  const { versionId } = await resolveLine(act, line, at)
  await act.insert('order_line', {
    id: act.newId('line'),
    order_id: orderId,
    position: at,
    version_id: versionId,
    colourway_id: line.colourwayId,
    units: line.units,
    price_minor: line.priceMinor,
  })
}

/** The version a new line is made from: the latest of its design. */
async function resolveLine(act: Act, line: Line, at: number) {
  const { design } = await getColourwayOf(act, line, (name) => `order.lines.${at}.${name}`)
  return { versionId: (await getLatestVersion(act, design.id)).id }
}

async function changeOrder(act: Act, id: string, input: OrderInput) {
  const row = await getRow(act.trx, 'sales_order', id)
  const code = orderCode(row.serial)
  if (row.state !== 'open') {
    refuse(
      'order-not-open',
      `Order ${code} is ${row.state}.`,
      'Reopen it first, or enter a new order.',
      'id',
    )
  }
  const [order] = await listOrders(act, { id })
  const lines = new Map((order?.lines ?? []).map((line) => [line.id, line]))
  await act.update('sales_order', id, orderColumns(input))
  const kept = new Set(input.lines.map((line) => line.id))
  for (const line of lines.values()) {
    if (!kept.has(line.id)) await dropLine(act, line)
  }
  for (const [at, line] of input.lines.entries()) {
    const before = line.id === undefined ? undefined : lines.get(line.id)
    await (before === undefined ? addLine(act, id, line, at) : changeLine(act, before, line, at))
  }
  return { value: { id, code }, label: `Saved order ${code} for ${input.customer}` }
}

async function dropLine(act: Act, line: Order['lines'][number]): Promise<void> {
  if (line.made > 0) {
    refuse(
      'line-has-makes',
      `${line.made} of ${line.designName} are made for this order already.`,
      'Keep the line, at least with the units that are made.',
      'order.lines',
    )
  }
  await act.remove('order_line', line.id)
}

async function changeLine(
  act: Act,
  before: Order['lines'][number],
  line: Line,
  at: number,
): Promise<void> {
  const sameMake = line.designId === before.designId && line.colourwayId === before.colourwayId
  if (line.units < before.made || (!sameMake && before.made > 0)) {
    refuse(
      'line-has-makes',
      `${before.made} of ${before.designName} are made for this line already.`,
      `Keep its design and colourway, and at least ${before.made} units.`,
      `order.lines.${at}.${sameMake ? 'units' : 'designId'}`,
    )
  }
  const patch: Partial<Row<'order_line'>> = sameMake
    ? {}
    : {
        version_id: (await resolveLine(act, line, at)).versionId,
        colourway_id: line.colourwayId,
      }
  await act.update('order_line', before.id, {
    ...patch,
    position: at,
    units: line.units,
    price_minor: line.priceMinor,
  })
}

const STATE_LABEL = { open: 'Reopened', closed: 'Closed', cancelled: 'Cancelled' } as const

export const setOrderState: ActHandler<'orders.setState'> = async (act, { id, state }) => {
  const row = await getRow(act.trx, 'sales_order', id)
  await act.update('sales_order', id, { state })
  // Pieces wait for an order only while it is open.
  const pieces = await act.trx
    .selectFrom('piece')
    .innerJoin('make', 'make.id', 'piece.make_id')
    .innerJoin('order_line', 'order_line.id', 'make.order_line_id')
    .select(['piece.id', 'piece.state', 'piece.place_id'])
    .where('order_line.order_id', '=', id)
    .where('piece.removed_by', 'is', null)
    .where('piece.state', '=', state === 'open' ? 'here' : 'reserved')
    .orderBy('piece.code')
    .execute()
  for (const piece of pieces) {
    await act.update('piece', piece.id, { state: state === 'open' ? 'reserved' : 'here' })
    await act.append('piece_movement', {
      piece_id: piece.id,
      kind: state === 'open' ? 'reserved' : 'released',
      place_id: piece.place_id,
      note: orderCode(row.serial),
    })
  }
  return { value: {}, label: `${STATE_LABEL[state]} order ${orderCode(row.serial)}` }
}
