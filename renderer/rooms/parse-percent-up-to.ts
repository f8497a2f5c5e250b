import type { ParseResult } from '../../shared-core/units/parse-options.ts'
import { parsePercent } from '../../shared-core/units/parse-percent.ts'
import { percentOf, type Ratio } from '../../shared-core/units/ratio.ts'
import { withinBounds } from '../../shared-core/units/within-bounds.ts'
import type { Format } from '../app/format.ts'

/** Of a price nothing can be left whole: that is the most margin that is worth asking for, percent. */
export const MOST_MARGIN = 99

/** A share as it is typed, from nothing to so many percent. */
export function parsePercentUpTo(
  most: number,
  text: string,
  { decimal, percent }: Format,
): ParseResult<Ratio> {
  return withinBounds(parsePercent(text, { decimal }), text, {
    least: 0,
    most,
    of: (ratio) => Number(percentOf(ratio)),
    write: (value) => percent(String(value)),
  })
}
