import type { ParseResult } from '../../shared-core/units/parse-options.ts'
import { parsePercent } from '../../shared-core/units/parse-percent.ts'
import { percentOf, type Ratio } from '../../shared-core/units/ratio.ts'
import { withinBounds } from '../../shared-core/units/within-bounds.ts'
import type { Format } from '../app/format.ts'

/** A margin as it is typed. Of a price nothing can be left whole: 99 % is the most that is worth asking for. */
export function parseMargin(text: string, { decimal, percent }: Format): ParseResult<Ratio> {
  return withinBounds(parsePercent(text, { decimal }), text, {
    ...{ least: 0, most: 99 },
    of: (ratio) => Number(percentOf(ratio)),
    write: (value) => percent(String(value)),
  })
}
