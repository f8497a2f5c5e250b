import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import {
  addFractions,
  compareFractions,
  divideFractions,
  fraction,
  subtractFractions,
} from '../units/fraction.ts'
import { type Ratio, ratioFromFraction, ratioToFraction } from '../units/ratio.ts'

/**
 * The mark-up on cost that a margin on price amounts to: m / (1 - m), to eight decimals half-even.
 *
 * Refusal `bad-target` for a margin of 100 % or more.
 * @example markupOfMargin(ratio('0.5')) // 1: a mark-up of 100 %
 */
export function markupOfMargin(margin: Ratio): Result<Ratio, Refusal> {
  const exact = ratioToFraction(margin)
  if (compareFractions(exact, ONE) >= 0) {
    return err({
      code: 'bad-target',
      message: 'A margin of 100 % or more has no mark-up.',
      next: 'Type a margin under 100 %.',
    })
  }
  return ok(
    ratioFromFraction(divideFractions(exact, subtractFractions(ONE, exact)), 8, 'half-even'),
  )
}

/**
 * The margin on price that a mark-up on cost amounts to: k / (1 + k), to eight decimals half-even.
 *
 * Refusal `bad-target` for a mark-up of -100 % or less.
 */
export function marginOfMarkup(markup: Ratio): Result<Ratio, Refusal> {
  const exact = ratioToFraction(markup)
  const whole = addFractions(ONE, exact)
  if (whole.numerator <= 0n) {
    return err({
      code: 'bad-target',
      message: 'A mark-up of −100 % or less has no margin.',
      next: 'Type a mark-up above −100 %.',
    })
  }
  return ok(ratioFromFraction(divideFractions(exact, whole), 8, 'half-even'))
}

const ONE = fraction(1)
