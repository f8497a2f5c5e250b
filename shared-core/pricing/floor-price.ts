import type { Refusal } from '../refusal.ts'
import { ok, type Result } from '../result.ts'
import { addFractions, divideFractions, fraction } from '../units/fraction.ts'
import { RATIO_ZERO } from '../units/ratio.ts'
import { ceilFraction } from '../units/rounding.ts'
import type { Channel } from './channel.ts'
import { exactPrice } from './exact-price.ts'
import type { PieceCost } from './piece-cost.ts'
import { priceAt } from './price-at.ts'

/**
 * The lowest price in whole minor units from which up no sale loses money.
 *
 * Checked with tax and fees rounded as on a statement: neither this price nor any above it makes a
 * loss, and the price one minor unit below it does (unless it is 0). Refusal: `no-such-price`.
 */
export function floorPrice(cost: PieceCost, channel: Channel): Result<number, Refusal> {
  const exact = exactPrice(channel, {
    fixedMinor: fraction(cost.costMinor),
    shareOfNet: RATIO_ZERO,
  })
  if (!exact.ok) return exact
  const { priceMinor, leftPerMinor } = exact.value
  const margin = divideFractions(fraction(LARGEST_ROUNDING_LOSS), leftPerMinor)
  const safe = ceilFraction(addFractions(priceMinor, margin))
  return ok(lowestWithoutLoss(cost, channel, safe))
}

// Two taxes and three fees, each off by half a unit at most, and the fees on a rounded base by less
// than half in all: three units above the exact floor no sale can lose.
const LARGEST_ROUNDING_LOSS = 3
// Reached only where fees leave under 0.03 % of each coin; the price is then safe, not the lowest.
const LONGEST_WALK = 20_000

function lowestWithoutLoss(cost: PieceCost, channel: Channel, safe: number): number {
  const end = Math.max(0, safe - LONGEST_WALK)
  let price = safe
  while (price > end && priceAt(cost, channel, price - 1).profitMinor >= 0) price -= 1
  return price
}
