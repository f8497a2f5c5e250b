import { orderFor, type SmallWorkshop } from '../small-workshop.ts'

/** An order of one line, by the ids of both. */
export async function orderLine(shop: SmallWorkshop, units: number) {
  const { id } = await shop.studio.ask('orders.save', { order: orderFor(shop, units) })
  const { order } = await shop.studio.ask('orders.read', { id })
  return { id, lineId: order.lines[0]?.id ?? '' }
}
