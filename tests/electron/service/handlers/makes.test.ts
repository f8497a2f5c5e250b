import { describe, expect, it } from 'vitest'
import { openSmallWorkshop } from '../small-workshop.ts'
import { orderLine } from './order-line.ts'
import { make, what } from './what-is-made.ts'

describe('makes.finish', () => {
  it('takes what was planned out of the stock, and gives each piece its code, place and cost', async () => {
    const shop = await openSmallWorkshop()
    const { studio, materials } = shop
    const { lineId } = await orderLine(shop, 5)
    const stockOf = async (id: string) => (await studio.ask('materials.read', { id })).material
    const before = { slate: await stockOf(materials.slate), wire: await stockOf(materials.wire) }
    const plan = await studio.ask('makes.plan', { ...what(shop), units: 4, orderLineId: lineId })
    expect(plan.faults).toEqual([])
    const { pieces } = await studio.ask('makes.finish', {
      ...make(shop, 4),
      orderLineId: lineId,
      benchS: 7_201,
    })
    expect(pieces.map(({ code }) => code.slice(0, 7))).toEqual([
      'SS-0001',
      'SS-0002',
      'SS-0003',
      'SS-0004',
    ])
    const drawn = (id: string) =>
      plan.draws
        .filter((draw) => draw.materialId === id)
        .reduce((sum, draw) => sum + draw.quantity, 0)
    expect((await stockOf(materials.slate)).onHand).toBe(
      before.slate.onHand - drawn(materials.slate),
    )
    expect(await stockOf(materials.wire)).toMatchObject({
      onHand: 32,
      valueMinor: before.wire.valueMinor - 256,
      reserved: 2,
    })
    const shelf = (await studio.ask('pieces.list', { state: 'here' })).pieces
    expect(
      shelf.every((piece) => piece.state === 'reserved' && piece.orderCode === 'OR-0001'),
    ).toBe(true)
    const values = await studio.ask('materials.list', {})
    const spent =
      500 + 500 + 1_450 + 1_280 - values.materials.reduce((sum, one) => sum + one.valueMinor, 0)
    // 7,201 s at 18.00 an hour is 36.005, and 15 % of it 5.40: rounded together to 41.41.
    const cost = shelf.reduce((sum, piece) => sum + piece.costMinor, 0)
    expect(cost).toBe(spent + 4_141)
    await studio.close()
  })

  it('makes no more than an order still needs, and nothing for another design’s line', async () => {
    const shop = await openSmallWorkshop()
    const { lineId } = await orderLine(shop, 2)
    const tooMany = { ...make(shop, 3), orderLineId: lineId }
    expect(await shop.studio.refused('makes.finish', tooMany)).toMatchObject({
      code: 'more-than-ordered',
      field: 'units',
    })
    await shop.studio.close()
  })

  it('takes nothing that is promised to an order, unless it is for that order', async () => {
    const shop = await openSmallWorkshop()
    const { lineId } = await orderLine(shop, 18)
    const refusal = await shop.studio.refused('makes.finish', make(shop, 4))
    expect(refusal).toMatchObject({ code: 'not-enough-stock' })
    expect(refusal.message).toContain('ear wire is enough for 2 of 4')
    await shop.studio.ask('makes.finish', make(shop, 2))
    await shop.studio.ask('makes.finish', { ...make(shop, 18), orderLineId: lineId })
    const { materials } = await shop.studio.ask('materials.list', {})
    expect(materials.find(({ code }) => code === 'EW')?.onHand).toBe(0)
    await shop.studio.close()
  })

  it('never uses one number twice, even after an undo', async () => {
    const shop = await openSmallWorkshop()
    await shop.studio.ask('makes.finish', make(shop, 1))
    await shop.studio.ask('history.undo', {})
    const { pieces } = await shop.studio.ask('makes.finish', make(shop, 1))
    expect(pieces[0]?.code).toMatch(/^SS-0002/)
    await shop.studio.close()
  })
})
