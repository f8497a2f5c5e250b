import { describe, expect, it } from 'vitest'
import { TODAY } from '../open-studio.ts'
import { openSmallWorkshop, orderFor } from '../small-workshop.ts'
import { bare, begin, ending, stockOf } from './bench-work.ts'
import { orderLine } from './order-line.ts'
import { what } from './what-is-made.ts'

describe('bench work', () => {
  it('holds what it takes, so that nothing is promised twice', async () => {
    const shop = await openSmallWorkshop()
    const { studio, materials } = shop
    const id = await begin(shop, 18)
    expect(await stockOf(shop, materials.wire)).toMatchObject({ reserved: 36, available: 4 })
    const { faults } = await studio.ask('makes.plan', { ...what(shop), units: 3 })
    expect(faults.map(({ code }) => code)).toEqual(['not-enough-stock'])
    const draft = { today: TODAY, order: { draft: orderFor(shop, 3) } }
    expect((await studio.ask('orders.cover', draft)).lines[0]?.coveredUnits).toBe(2)
    const { work, held } = await studio.ask('bench.read', { id })
    expect(work).toMatchObject({ state: 'begun', units: 18, workedS: 0, order: null })
    expect(held.find(({ name }) => name === 'ear wire')?.quantity).toBe(36)
    await studio.ask('bench.giveUp', { id, note: 'The cat.' })
    expect(await stockOf(shop, materials.wire)).toMatchObject({ reserved: 0, available: 40 })
    await studio.close()
  })

  it('for an order holds no more than the order does, and is not begun twice', async () => {
    const shop = await openSmallWorkshop()
    const { studio, materials } = shop
    const { lineId } = await orderLine(shop, 5)
    const id = await begin(shop, 3, { orderLineId: lineId })
    expect(await stockOf(shop, materials.wire)).toMatchObject({ reserved: 10 })
    const more = { ...what(shop), units: 3, orderLineId: lineId, begunOn: TODAY, before: {} }
    expect(await studio.refused('bench.begin', more)).toMatchObject({
      code: 'begun-already',
      field: 'units',
    })
    expect((await studio.ask('bench.read', { id })).work.order).toMatchObject({
      code: 'OR-0001',
      customer: 'Ferry House Gifts',
    })
    await begin(shop, 2, { orderLineId: lineId })
    await studio.close()
  })

  it('can be begun while something is missing, and finished only once it is there', async () => {
    const shop = await openSmallWorkshop()
    const { studio, lots } = shop
    await studio.ask('lots.count', { lotId: lots.wire, quantity: 0, kind: 'counted', note: '' })
    const id = await begin(shop, 2)
    const { held } = await studio.ask('bench.read', { id })
    expect(held.map(({ name }) => name)).toEqual(['braided thread', 'brine', 'wet slate'])
    const { faults } = await studio.ask('bench.reckon', bare(id, 2))
    expect(faults).toMatchObject([{ code: 'not-enough-stock', field: shop.materials.wire }])
    const finish = { ...bare(id, 2), ...ending(shop) }
    expect(await studio.refused('bench.finish', finish)).toMatchObject({
      code: 'not-enough-stock',
    })
    await studio.ask('lots.count', { lotId: lots.wire, quantity: 40, kind: 'counted', note: '' })
    await studio.ask('bench.finish', finish)
    await studio.close()
  })

  it('draws from the lot she chose, and from no other', async () => {
    const shop = await openSmallWorkshop()
    const { studio, materials } = shop
    const { lotId } = await studio.ask('lots.receive', {
      ...{ materialId: materials.slate, quantity: 9_000, dyeLot: 'K9', supplierId: null },
      ...{ boughtOn: TODAY, costMinor: null, note: '' },
    })
    const { choices } = await studio.ask('makes.plan', { ...what(shop), units: 2 })
    expect(choices).toMatchObject([
      { name: 'wet slate', lots: [{ dyeLot: 'K1' }, { dyeLot: 'K9' }] },
    ])
    const id = await begin(shop, 2, { lots: { [materials.slate]: lotId } })
    await studio.ask('bench.finish', { ...bare(id, 2), ...ending(shop) })
    const { lots } = await studio.ask('materials.read', { id: materials.slate })
    expect(lots.map((lot) => lot.onHand === (lot.id === lotId ? 9_000 : 10_000))).toEqual([
      true,
      false,
    ])
    const foreign = { ...what(shop), units: 1, lots: { [materials.brine]: lotId } }
    expect(await studio.refused('makes.plan', foreign)).toMatchObject({
      code: 'lot-of-another-material',
      field: `lots.${materials.brine}`,
    })
    await studio.close()
  })
})
