import Big from 'big.js'
import { formatNumber, withoutTrailingZeros } from './format-number.ts'
import type { MassMg } from './mass.ts'
import type { DecimalMark } from './parse-options.ts'
import { roundHalfAway } from './rounding.ts'

/**
 * A mass with the digits a bench scale knows: about three figures, never finer than 0.01 g.
 *
 * Under 0.1 g in mg, from 1 kg up in kg; nothing is 0 g, as a scale shows it.
 * @example formatMass(massMg(18449), '.') // 18.4 g
 */
export function formatMass(mass: MassMg, mark: DecimalMark): string {
  const size = Math.abs(mass)
  if (mass === 0) return '0 g'
  if (size < 100) return `${formatNumber(String(mass), mark)} mg`
  if (size >= 1_000_000) return figure(mass, { perUnit: 1_000_000, digits: 2, unit: 'kg', mark })
  const digits = size < 9_995 ? 2 : size < 99_950 ? 1 : 0
  return figure(mass, { perUnit: 1000, digits, unit: 'g', mark })
}

/** A mass in grams with every digit it has, for restating what was typed. @example 12.5 g */
export function formatMassExactly(mass: MassMg, mark: DecimalMark): string {
  const grams = withoutTrailingZeros(new Big(mass).times('0.001').toFixed(3))
  return `${formatNumber(grams, mark)} g`
}

function figure(
  mass: number,
  how: Readonly<{ perUnit: number; digits: number; unit: string; mark: DecimalMark }>,
): string {
  const exact = new Big(mass).div(how.perUnit)
  return `${formatNumber(roundHalfAway(exact, how.digits), how.mark)} ${how.unit}`
}
