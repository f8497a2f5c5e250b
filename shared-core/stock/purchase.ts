import { assert } from '../assert.ts'
import type { Money } from '../units/money.ts'

/** A supplier's pack of a material: `packQuantity` in the material's unit for `price`. */
export type PackOffer = Readonly<{
  offerId: string
  supplierId: string
  materialId: string
  packQuantity: number
  price: Money
}>

/** Packs of one offer that fill a shortage; `leftOver` in the material's unit is bought beyond it. */
export type Purchase = Readonly<{ offerId: string; packs: number; cost: Money; leftOver: number }>

/**
 * The cheapest single offer that fills a shortage of one material: whole packs, total price compared.
 *
 * Freight, price breaks, minimum orders and mixed packs belong to the basket; this is the plain figure
 * beside a shortage. Equal totals go to the one with less left over, then to the first offer.
 *
 * @param short whole, above 0, in the material's unit
 * @param offers of this material, all in one currency
 * @returns nothing when there is no offer
 * @throws Error when two offers are in different currencies
 * @example 12 g short; 10 g at 4.20 or 50 g at 9.90 -> 2 packs of 10 g, 8.40, 8 g left over
 */
export function cheapestPurchase(
  short: number,
  offers: readonly PackOffer[],
): Purchase | undefined {
  let best: Purchase | undefined
  for (const offer of offers) {
    const found = purchaseOf(short, offer)
    assert(
      !best || best.cost.currency === found.cost.currency,
      'offers compared with each other are in one currency',
    )
    if (!best || isBetter(found, best)) best = found
  }
  return best
}

function purchaseOf(short: number, { offerId, packQuantity, price }: PackOffer): Purchase {
  assert(packQuantity > 0, `${offerId}: a pack holds more than nothing`)
  const packs = Math.ceil(short / packQuantity)
  const cost = { ...price, amountMinor: packs * price.amountMinor }
  return { offerId, packs, cost, leftOver: packs * packQuantity - short }
}

function isBetter(a: Purchase, b: Purchase): boolean {
  const saved = b.cost.amountMinor - a.cost.amountMinor
  return saved > 0 || (saved === 0 && a.leftOver < b.leftOver)
}
