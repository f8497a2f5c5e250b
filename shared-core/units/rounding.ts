import Big from 'big.js'
import { compareFractions, type Fraction, fraction } from './fraction.ts'

/**
 * How a value between two neighbours is rounded, by name.
 *
 * - `half-even`: to the nearest, a tie to the even neighbour (IEEE 754 ties-to-even).
 * - `half-away`: to the nearest, a tie away from zero (commercial rounding, invoices).
 * - `down`: towards zero. `up`: away from zero.
 */
export type RoundingMode = 'half-even' | 'half-away' | 'down' | 'up'

const BIG_MODES = {
  down: 0,
  'half-away': 1,
  'half-even': 2,
  up: 3,
} as const satisfies Record<RoundingMode, Big.RoundingMode>

/**
 * An exact decimal rounded to `decimals` places, as a plain decimal text with exactly that many.
 *
 * @param value a decimal text or a Big; never a float, which has lost the tie already
 * @param decimals 0 or more
 * @example roundDecimal('1.005', 2, 'half-away') // '1.01', where (1.005).toFixed(2) is '1.00'
 */
export function roundDecimal(value: string | Big, decimals: number, mode: RoundingMode): string {
  const rounded = new Big(value).round(decimals, BIG_MODES[mode])
  // Big keeps a signed zero; a rounded -0.004 is plain 0.00.
  return (rounded.eq(0) ? rounded.abs() : rounded).toFixed(decimals)
}

/** `roundDecimal` with ties to the even neighbour: 2.5 -> 2, 3.5 -> 4. */
export function roundHalfEven(value: string | Big, decimals: number): string {
  return roundDecimal(value, decimals, 'half-even')
}

/** `roundDecimal` with ties away from zero: 2.5 -> 3, -2.5 -> -3. */
export function roundHalfAway(value: string | Big, decimals: number): string {
  return roundDecimal(value, decimals, 'half-away')
}

/**
 * A fraction rounded to a whole number.
 *
 * @throws RangeError when the result is beyond the safe integers: money or mass that large is a bug.
 * @example roundFraction(fraction(5, 2), 'half-even') // 2
 */
export function roundFraction(value: Fraction, mode: RoundingMode): number {
  const whole = Number(roundedMagnitude(value, mode)) * (value.numerator < 0n ? -1 : 1)
  if (!Number.isSafeInteger(whole)) throw new RangeError(`roundFraction: ${whole} is too large`)
  return whole || 0
}

/** The largest whole number that is not above the fraction. @throws RangeError beyond safe integers. */
export function floorFraction(value: Fraction): number {
  return roundFraction(value, value.numerator < 0n ? 'up' : 'down')
}

/** The smallest whole number that is not below the fraction. @throws RangeError beyond safe integers. */
export function ceilFraction(value: Fraction): number {
  return roundFraction(value, value.numerator < 0n ? 'down' : 'up')
}

function roundedMagnitude(value: Fraction, mode: RoundingMode): bigint {
  const magnitude = value.numerator < 0n ? -value.numerator : value.numerator
  const whole = magnitude / value.denominator
  const rest = fraction(magnitude % value.denominator, value.denominator)
  if (rest.numerator === 0n || mode === 'down') return whole
  if (mode === 'up') return whole + 1n
  const half = compareFractions(rest, fraction(1, 2))
  const tieGoesUp = mode === 'half-away' || whole % 2n === 1n
  return half > 0 || (half === 0 && tieGoesUp) ? whole + 1n : whole
}
