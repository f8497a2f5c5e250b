import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import { addFractions, type Fraction, fraction, subtractFractions } from '../units/fraction.ts'
import { roundFraction } from '../units/rounding.ts'
import {
  assertEvents,
  type IssueCost,
  type IssueCosts,
  notEnoughStock,
  type StockEvent,
} from './stock-event.ts'

/**
 * Moving weighted average: every receipt makes a new average, every issue goes at the one that holds.
 *
 * The average is kept as an exact fraction. Each issue's minor units are the difference of what had
 * been issued in all before and after, each rounded half-even, so that many small issues never
 * drift from the exact cost. Refusal `not-enough-stock`.
 *
 * @source IAS 2, paragraphs 25 and 27
 * @example 10 at 4.00, issue 6, 8 at 5.50, issue 7 -> 24.00 and 35.00
 */
export function movingAverageCosts(events: readonly StockEvent[]): Result<IssueCosts, Refusal> {
  assertEvents(events)
  const issues: IssueCost[] = []
  let [quantity, receivedMinor] = [0, 0]
  let [value, issued] = [fraction(0), fraction(0)]
  for (const [index, event] of events.entries()) {
    if (event.kind === 'receive') {
      quantity += event.quantity
      receivedMinor += event.costMinor
      value = addFractions(value, fraction(event.costMinor))
      continue
    }
    if (event.quantity > quantity) return err(notEnoughStock(index + 1, event.quantity, quantity))
    const exact = shareOf(value, event.quantity, quantity)
    const after = addFractions(issued, exact)
    issues.push({ quantity: event.quantity, exact, costMinor: rounded(after) - rounded(issued) })
    quantity -= event.quantity
    value = subtractFractions(value, exact)
    issued = after
  }
  const issuedMinor = rounded(issued)
  const left = { quantity, exact: value, costMinor: receivedMinor - issuedMinor }
  return ok({ issues, issuedExact: issued, issuedMinor, left })
}

function shareOf(value: Fraction, part: number, whole: number): Fraction {
  if (part === whole) return value
  return bounded(fraction(value.numerator * BigInt(part), value.denominator * BigInt(whole)))
}

// Each issue multiplies the denominator; years of them would make numbers of thousands of digits.
// From sixty digits on a share is cut to sixty, an error of 10^-60 of a minor unit.
const LARGEST_DENOMINATOR = 10n ** 60n

function bounded(share: Fraction): Fraction {
  if (share.denominator <= LARGEST_DENOMINATOR) return share
  return fraction((share.numerator * LARGEST_DENOMINATOR) / share.denominator, LARGEST_DENOMINATOR)
}

function rounded(value: Fraction): number {
  return roundFraction(value, 'half-even')
}
