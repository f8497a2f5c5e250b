import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import { fraction } from '../units/fraction.ts'
import { roundFraction } from '../units/rounding.ts'
import type { Channel } from './channel.ts'
import type { PieceCost } from './piece-cost.ts'
import { type PriceOutcome, priceAt } from './price-at.ts'

/** The prices a curve runs over: both ends, and how many points, 2 to 500. */
export type PriceRange = Readonly<{ fromMinor: number; toMinor: number; points: number }>

/**
 * What each of a row of prices would leave, evenly spaced from the first to the last.
 *
 * Prices are whole minor units; points that fall together are given once. Refusal `bad-range`.
 */
export function whatIfCurve(
  cost: PieceCost,
  channel: Channel,
  range: PriceRange,
): Result<readonly PriceOutcome[], Refusal> {
  if (!isRange(range)) return err(BAD_RANGE)
  const span = range.toMinor - range.fromMinor
  const steps = range.points - 1
  const prices = Array.from({ length: range.points }, (_, step) => {
    const along = fraction(BigInt(span) * BigInt(step), steps)
    return range.fromMinor + roundFraction(along, 'half-even')
  })
  return ok([...new Set(prices)].map((price) => priceAt(cost, channel, price)))
}

function isRange({ fromMinor, toMinor, points }: PriceRange): boolean {
  const whole = [fromMinor, toMinor, points].every(Number.isSafeInteger)
  return whole && fromMinor >= 0 && toMinor > fromMinor && points >= 2 && points <= 500
}

const BAD_RANGE: Refusal = {
  code: 'bad-range',
  message: 'The range of prices is empty or has too many points.',
  next: 'Give a lower and a higher price from zero up, and 2 to 500 points.',
}
