import { fractionOfDecimal } from './fraction.ts'
import type { DecimalMark } from './parse-options.ts'

/** A real minus sign, as wide as a plus. */
export const MINUS = '\u2212'
// Present in every font, unlike the narrow one, and never breaks a figure over two lines.
const GROUP_SPACE = '\u00a0'

/**
 * A plain decimal as people read it: the given mark, spaces that do not break in groups of three from five
 * digits up, a real minus sign.
 *
 * @param decimal a plain decimal text, such as `-12345.60`
 * @example formatNumber('-12345.6', ',') // −12 345,6
 */
export function formatNumber(decimal: string, mark: DecimalMark): string {
  const negative = fractionOfDecimal(decimal).numerator < 0n
  const [whole = '0', decimals] = decimal.replace('-', '').split('.')
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, GROUP_SPACE) : whole
  const tail = decimals === undefined ? '' : `${mark}${decimals}`
  return `${negative ? MINUS : ''}${grouped}${tail}`
}

/** A whole number as people read it: 48, 12 500, −3. */
export function formatCount(value: number): string {
  if (!Number.isSafeInteger(value)) throw new RangeError(`formatCount: ${value} is not whole`)
  return formatNumber(String(value), '.')
}

/** A count with its noun, which takes an s where they are not one: `1 bead`, `12 500 beads`. */
export function formatCounted(count: number, noun: string): string {
  return `${formatCount(count)} ${noun}${count === 1 ? '' : 's'}`
}

/** A plain decimal without the zeros at its end: `12.500` is `12.5`, `3.00` is `3`. */
export function withoutTrailingZeros(decimal: string): string {
  return decimal.includes('.') ? decimal.replace(/\.?0+$/, '') : decimal
}
