import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cheapestPurchase, type PackOffer } from '../../../shared-core/stock/purchase.ts'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { money } from '../../../shared-core/units/money.ts'

const offer = (offerId: string, packQuantity: number, minor: number, currency = 'EUR') =>
  ({
    offerId,
    supplierId: 'marlow',
    materialId: 'fog',
    packQuantity,
    price: money(minor, currencyCode(currency)),
  }) satisfies PackOffer

describe('cheapestPurchase', () => {
  it('compares whole packs by their total price', () => {
    expect(
      cheapestPurchase(12_000, [offer('tube', 10_000, 420), offer('bag', 50_000, 990)]),
    ).toEqual({ offerId: 'tube', packs: 2, cost: money(840, currencyCode('EUR')), leftOver: 8_000 })
  })

  it('takes less left over at the same price, then the first', () => {
    const offers = [offer('a', 900, 100), offer('b', 700, 100), offer('c', 700, 100)]
    expect(cheapestPurchase(600, offers)?.offerId).toBe('b')
  })

  it('has no answer without an offer, and none across currencies', () => {
    expect(cheapestPurchase(600, [])).toBeUndefined()
    expect(() => cheapestPurchase(1, [offer('a', 1, 1), offer('b', 1, 1, 'GBP')])).toThrow(
      'currency',
    )
    expect(() => cheapestPurchase(1, [offer('a', 0, 1)])).toThrow('pack')
  })

  it('fills the shortage, with less than a pack left over, at no more than any other offer', () => {
    const pack = fc.record({
      quantity: fc.integer({ min: 1, max: 5_000 }),
      minor: fc.integer({ min: 0, max: 9_999 }),
    })
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100_000 }),
        fc.array(pack, { minLength: 1, maxLength: 5 }),
        (short, packs) => {
          const offers = packs.map(({ quantity, minor }, i) => offer(`${i}`, quantity, minor))
          const best = cheapestPurchase(short, offers)
          const chosen = offers.find(({ offerId }) => offerId === best?.offerId)
          if (!best || !chosen) throw new Error('an offer is chosen')
          expect(best.packs * chosen.packQuantity - best.leftOver).toBe(short)
          expect(best.leftOver).toBeLessThan(chosen.packQuantity)
          for (const { packQuantity, price } of offers) {
            const cost = Math.ceil(short / packQuantity) * price.amountMinor
            expect(best.cost.amountMinor).toBeLessThanOrEqual(cost)
          }
        },
      ),
    )
  })
})
