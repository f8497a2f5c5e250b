import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import { type Fraction, fraction } from '../units/fraction.ts'
import { ceilFraction } from '../units/rounding.ts'

/** How many sales pay for a fixed cost: the exact quotient, and whole sales rounded up. */
export type BreakEven = Readonly<{ exact: Fraction; count: number }>

/**
 * How many sales pay for a fixed cost such as a stall fee: fixed / what each sale leaves.
 *
 * @param fixedMinor minor units, 0 or more
 * @param leftPerSaleMinor price less everything one more sale costs: the profit of `priceAt`
 * @returns Refusal `never-breaks-even` when a sale leaves nothing while there is something to pay.
 * @example breakEven(30000, 1125) // 26.67, so 27 sales
 */
export function breakEven(
  fixedMinor: number,
  leftPerSaleMinor: number,
): Result<BreakEven, Refusal> {
  if (!Number.isSafeInteger(fixedMinor) || fixedMinor < 0) {
    return err({
      code: 'bad-amount',
      message: 'The fixed cost is below zero or not whole.',
      next: 'Type an amount from zero up.',
    })
  }
  if (fixedMinor === 0) return ok({ exact: fraction(0), count: 0 })
  if (leftPerSaleMinor <= 0) {
    return err({
      code: 'never-breaks-even',
      message: 'A sale leaves nothing, so no number of sales pays for the fixed cost.',
      next: 'Raise the price or lower the cost of the piece.',
    })
  }
  const exact = fraction(fixedMinor, leftPerSaleMinor)
  return ok({ exact, count: ceilFraction(exact) })
}
