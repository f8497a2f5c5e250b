import Big from 'big.js'
import { type Fraction, fractionOfDecimal } from './fraction.ts'
import type { Id } from './quantity.ts'
import { type RoundingMode, roundFraction } from './rounding.ts'

/**
 * An exact decimal ratio as plain text: `0.065` for 6.5 %, `1.05` for five percent on top.
 *
 * Text, so that it survives JSON and the database unchanged; equal ratios are equal texts.
 */
export type Ratio = Id<'ratio'>

/** The ratio 0. */
export const RATIO_ZERO: Ratio = ratio('0')

/**
 * The only door to `Ratio`: any decimal text Big reads, brought to its shortest plain form.
 *
 * @throws Error for text that is no number: a bug, because input is parsed first.
 * @example ratio('0.0650') // '0.065'
 */
export function ratio(decimal: string | Big): Ratio {
  const value = new Big(decimal)
  return (value.eq(0) ? '0' : value.toFixed()) as Ratio
}

/** The ratio of so many percent: `ratioFromPercent('6.5')` is 0.065. */
export function ratioFromPercent(percent: string | Big): Ratio {
  return ratio(new Big(percent).times('0.01'))
}

/** The ratio in percent, as a plain decimal text: 0.065 gives `6.5`. */
export function percentOf(value: Ratio): string {
  return new Big(value).times(100).toFixed()
}

/** The ratio as an exact fraction, ready for a calculation. */
export function ratioToFraction(value: Ratio): Fraction {
  return fractionOfDecimal(value)
}

/** A fraction rounded to `decimals` places: what a screen or a record keeps of an exact quotient. */
export function ratioFromFraction(value: Fraction, decimals: number, mode: RoundingMode): Ratio {
  const scale = 10n ** BigInt(decimals)
  const scaled = roundFraction(
    { numerator: value.numerator * scale, denominator: value.denominator },
    mode,
  )
  return ratio(new Big(scaled).times(new Big(10).pow(-decimals)))
}
