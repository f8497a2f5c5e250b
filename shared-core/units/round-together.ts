import { byLargest } from './allocate.ts'
import { type Fraction, fraction, subtractFractions, sumFractions } from './fraction.ts'
import { floorFraction, type RoundingMode, roundFraction } from './rounding.ts'

/**
 * Rounds exact parts so that the whole parts sum to the once-rounded total.
 *
 * The total is rounded by name; each part takes its floor, and what is left goes one unit each to
 * the largest fractions, ties to the earlier part. Every part stays within one unit of its exact
 * value, and a part that is whole already stays as it is.
 *
 * @example three parts of 1/3 give total 1 and parts 1, 0, 0
 */
export function roundTogether(
  parts: readonly Fraction[],
  mode: RoundingMode,
): Readonly<{ total: number; parts: readonly number[] }> {
  const total = roundFraction(sumFractions(parts), mode)
  const floors = parts.map(floorFraction)
  const left = total - floors.reduce((a, b) => a + b, 0)
  const rests = parts.map((part, line) => subtractFractions(part, fraction(floors[line] ?? 0)))
  const common = rests.reduce((product, rest) => product * rest.denominator, 1n)
  const scaled = rests.map((rest) => rest.numerator * (common / rest.denominator))
  const lucky = new Set(byLargest(scaled).slice(0, left))
  return { total, parts: floors.map((floor, line) => floor + (lucky.has(line) ? 1 : 0)) }
}
