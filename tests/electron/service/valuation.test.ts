import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { TODAY } from './open-studio.ts'
import { openSmallWorkshop, type SmallWorkshop } from './small-workshop.ts'

type Method = 'fifo' | 'average'

async function costBy(shop: SmallWorkshop, costingMethod: Method): Promise<void> {
  const { workshop } = await shop.studio.ask('workshop.read', {})
  if (workshop === null) throw new Error('expected a workshop')
  const { currency: _, ...figures } = workshop
  await shop.studio.ask('workshop.save', { workshop: { ...figures, costingMethod } })
}

async function wireOf({ studio, materials }: SmallWorkshop) {
  return (await studio.ask('materials.read', { id: materials.wire })).material
}

function receive(shop: SmallWorkshop, quantity: number, costMinor: number) {
  const lot = { dyeLot: '', supplierId: null, boughtOn: TODAY, note: '' }
  return shop.studio.ask('lots.receive', {
    materialId: shop.materials.wire,
    quantity,
    costMinor,
    ...lot,
  })
}

function count(shop: SmallWorkshop, lotId: string, quantity: number) {
  return shop.studio.ask('lots.count', { lotId, quantity, kind: 'counted', note: '' })
}

describe('the value of the stock', () => {
  // 40 wires for 12.80 are there; 10 for 4.00 come in; 24 go out, then 8 for 5.50 come in and 20 go out.
  it.each([
    // The oldest first: 24 and 16 of the first lot, 4 of the second; 6 x 0.40 and 5.50 are left.
    ['fifo', [9_12, 7_90]],
    // 26 of 50 at 16.80 are 8.736, with 5.50 for 34 at 14.236; 14 of them are 5.862.
    ['average', [8_74, 5_86]],
  ] as const)('by %s follows a worked example', async (method, [afterFirst, atEnd]) => {
    const shop = await openSmallWorkshop()
    await costBy(shop, method)
    await receive(shop, 10, 4_00)
    await count(shop, shop.lots.wire, 16)
    expect((await wireOf(shop)).valueMinor).toBe(afterFirst)
    const { lotId } = await receive(shop, 8, 5_50)
    await count(shop, shop.lots.wire, 4)
    await count(shop, lotId, 0)
    expect(await wireOf(shop)).toMatchObject({ onHand: 14, valueMinor: atEnd })
    await shop.studio.close()
  })

  it.each(['fifo', 'average'] as const)(
    'by %s is nothing when nothing is left, whatever went before',
    async (method) => {
      await fc.assert(
        fc.asyncProperty(
          fc.array(
            fc.record({
              quantity: fc.integer({ min: 1, max: 90 }),
              cost: fc.integer({ min: 0, max: 9_999 }),
              share: fc.double({ min: 0, max: 1, noNaN: true }),
            }),
            { minLength: 1, maxLength: 6 },
          ),
          async (steps) => {
            const shop = await openSmallWorkshop()
            await costBy(shop, method)
            const lots = [shop.lots.wire]
            for (const { quantity, cost, share } of steps) {
              const { lotId } = await receive(shop, quantity, cost)
              lots.push(lotId)
              await count(shop, lotId, Math.floor(quantity * share))
              expect((await wireOf(shop)).valueMinor).toBeGreaterThanOrEqual(0)
            }
            for (const lotId of lots) await count(shop, lotId, 0)
            expect(await wireOf(shop)).toMatchObject({ onHand: 0, valueMinor: 0 })
            await shop.studio.close()
          },
        ),
        { numRuns: 10 },
      )
    },
  )

  it('keeps its method once something has gone out, and may change it before', async () => {
    const shop = await openSmallWorkshop()
    await costBy(shop, 'average')
    await costBy(shop, 'fifo')
    await count(shop, shop.lots.wire, 39)
    await expect(costBy(shop, 'average')).rejects.toThrow('costing-method-in-use')
    await shop.studio.ask('history.undo', {})
    await costBy(shop, 'average')
    await shop.studio.close()
  })
})
