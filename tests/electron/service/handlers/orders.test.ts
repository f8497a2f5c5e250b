import { describe, expect, it } from 'vitest'
import { openSmallWorkshop, orderFor, smallBody } from '../small-workshop.ts'
import { orderLine } from './order-line.ts'
import { make } from './what-is-made.ts'

describe('orders.save', () => {
  it('keeps what is made of a line', async () => {
    const shop = await openSmallWorkshop()
    const { studio } = shop
    const { id, lineId } = await orderLine(shop, 5)
    await studio.ask('makes.finish', { ...make(shop, 3), orderLineId: lineId })
    const order = orderFor(shop, 2)
    const [line] = order.lines
    const fewer = { ...order, lines: [{ ...line, id: lineId }] }
    expect(await studio.refused('orders.save', { id, order: fewer })).toMatchObject({
      code: 'line-has-makes',
      field: 'order.lines.0.units',
    })
    expect(await studio.refused('orders.save', { id, order })).toMatchObject({
      code: 'line-has-makes',
      field: 'order.lines',
    })
    const enough = { ...order, lines: [{ ...line, id: lineId, units: 3 }] }
    await studio.ask('orders.save', { id, order: enough as typeof order })
    expect((await studio.ask('orders.read', { id })).order).toMatchObject({
      state: 'ready',
      totalMinor: 5_700,
    })
    await studio.close()
  })

  it('stays with the version it was entered for, and a new line takes the latest', async () => {
    const shop = await openSmallWorkshop()
    const { studio, designId } = shop
    const { id, lineId } = await orderLine(shop, 2)
    const body = { ...smallBody, unitName: 'card' }
    await studio.ask('designs.save', {
      id: designId,
      name: 'Samphire studs',
      tags: [],
      body,
      note: '',
    })
    const order = orderFor(shop, 2)
    const [line] = order.lines
    if (line === undefined) throw new Error('expected a line')
    await studio.ask('orders.save', {
      id,
      order: { ...order, lines: [{ ...line, id: lineId }, line] },
    })
    const { order: saved } = await studio.ask('orders.read', { id })
    expect(saved.lines.map(({ unitName }) => unitName)).toEqual(['pair', 'card'])
    await studio.close()
  })

  it('refuses a due date before the promise and a colourway of another design', async () => {
    const shop = await openSmallWorkshop()
    const { studio } = shop
    const late = { ...orderFor(shop, 1), dueOn: '2026-11-24' }
    expect(await studio.refused('orders.save', { order: late })).toMatchObject({
      code: 'due-before-promise',
      field: 'order.dueOn',
    })
    const other = await studio.ask('designs.save', {
      name: 'Other',
      tags: [],
      body: smallBody,
      note: '',
    })
    const order = orderFor(shop, 1)
    const mixed = { ...order, lines: order.lines.map((line) => ({ ...line, designId: other.id })) }
    expect(await studio.refused('orders.save', { order: mixed })).toMatchObject({
      code: 'colourway-of-another-design',
      field: 'order.lines.0.colourwayId',
    })
    await studio.close()
  })
})
