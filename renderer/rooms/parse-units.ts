import { parseCount } from '../../shared-core/units/parse-count.ts'
import type { ParseResult } from '../../shared-core/units/parse-options.ts'
import { withinBounds } from '../../shared-core/units/within-bounds.ts'
import type { Format } from '../app/format.ts'

/** As many as one order line or one make takes. */
const MOST_UNITS = 10_000

/** How many units are promised or made, as it is typed: at least one. */
export function parseUnits(
  text: string,
  { decimal, count }: Pick<Format, 'decimal' | 'count'>,
): ParseResult<number> {
  const bounds = { least: 1, most: MOST_UNITS, of: Number, write: count }
  return withinBounds(parseCount(text, { decimal }), text, bounds)
}
