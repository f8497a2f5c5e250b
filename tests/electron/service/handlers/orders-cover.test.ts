import { describe, expect, it } from 'vitest'
import { TODAY } from '../open-studio.ts'
import { openSmallWorkshop, orderFor } from '../small-workshop.ts'
import { orderLine } from './order-line.ts'
import { make } from './what-is-made.ts'

describe('orders.cover', () => {
  it('says what limits, what is short, in which packs, at what cost and from when', async () => {
    const shop = await openSmallWorkshop()
    const { studio, materials, supplierId } = shop
    const offer = { materialId: materials.wire, supplierId, packQuantity: 20, priceMinor: 640 }
    await studio.ask('offers.save', { offer })
    await orderLine(shop, 12)
    const draft = { today: TODAY, order: { draft: orderFor(shop, 10) } }
    const cover = await studio.ask('orders.cover', draft)
    expect(cover).toMatchObject({ covered: false, costMinor: 640, hereOn: '2026-11-29' })
    expect(cover.lines[0]).toMatchObject({
      units: 10,
      coveredUnits: 8,
      limits: [{ key: 'extra:wire', perUnit: 2, onHand: 40, heldByOthers: 24, enoughFor: 8 }],
      shortages: [
        {
          short: 4,
          packs: [
            {
              supplier: 'Marlow Bead Supply',
              packQuantity: 20,
              packs: 1,
              costMinor: 640,
              leadDays: 4,
            },
          ],
        },
      ],
    })
    await studio.close()
  })

  it('serves who was promised first, and a draft behind all', async () => {
    const shop = await openSmallWorkshop()
    const first = await orderLine(shop, 15)
    const second = await orderLine(shop, 15)
    const { orders } = await shop.studio.ask('orders.coverAll', { today: TODAY })
    expect(orders.map(({ orderId, cover }) => [orderId, cover.lines[0]?.coveredUnits])).toEqual([
      [first.id, 15],
      [second.id, 5],
    ])
    await shop.studio.ask('orders.setState', { id: first.id, state: 'cancelled' })
    const after = await shop.studio.ask('orders.coverAll', { today: TODAY })
    expect(after.orders.map(({ cover }) => cover.covered)).toEqual([true])
    await shop.studio.close()
  })

  it('names what has no material yet', async () => {
    const shop = await openSmallWorkshop()
    const { studio, designId, colourwayId, materials } = shop
    await studio.ask('colourways.save', {
      ...{ designId, id: colourwayId, name: 'Half' },
      materials: { 'slot:A': materials.slate, thread: materials.thread },
    })
    const draft = { today: TODAY, order: { draft: orderFor(shop, 2) } }
    const cover = await studio.ask('orders.cover', draft)
    expect(cover).toMatchObject({ covered: false, costMinor: null, hereOn: null })
    expect(cover.lines[0]?.limits.map(({ key, materialId }) => [key, materialId])).toEqual([
      ['slot:B', null],
      ['extra:wire', null],
    ])
    const plan = { designId, colourwayId, units: 1 }
    const { faults } = await studio.ask('makes.plan', plan)
    expect(faults.map(({ code, field }) => [code, field])).toEqual([
      ['not-assigned', 'slot:B'],
      ['not-assigned', 'extra:wire'],
    ])
    expect(await studio.refused('makes.finish', make(shop, 1))).toMatchObject({
      code: 'not-assigned',
    })
    await studio.close()
  })
})
