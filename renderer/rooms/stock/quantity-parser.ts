import { parseCount } from '../../../shared-core/units/parse-count.ts'
import { parseThread } from '../../../shared-core/units/parse-length.ts'
import { parseMass } from '../../../shared-core/units/parse-mass.ts'
import type { DecimalMark, ParseResult } from '../../../shared-core/units/parse-options.ts'
import { withinBounds } from '../../../shared-core/units/within-bounds.ts'
import type { Format } from '../../app/format.ts'

export type MaterialUnit = 'mg' | 'mm' | 'piece'

/** The parser of a material's quantity: grams, metres or pieces, as its unit is. */
export function quantityParser(
  unit: MaterialUnit,
  decimal: DecimalMark,
): (text: string) => ParseResult<number> {
  if (unit === 'mg') return (text) => parseMass(text, { decimal })
  if (unit === 'mm') return (text) => parseThread(text, { decimal, unit: 'm' })
  return (text) => parseCount(text, { decimal })
}

const MOST_QUANTITY = 1_000_000_000_000

/** The parser of a quantity that must be something, such as what a pack holds. */
export function someParser(
  unit: MaterialUnit,
  format: Format,
): (text: string) => ParseResult<number> {
  const parse = quantityParser(unit, format.decimal)
  return (text) =>
    withinBounds(parse(text), text, {
      ...{ least: 1, most: MOST_QUANTITY, of: Number },
      write: (quantity) => format.exactly(quantity, unit),
    })
}

/** What is written after a quantity's field when no unit is typed. */
export const unitWords: Readonly<Record<MaterialUnit, string>> = {
  mg: 'g',
  mm: 'm',
  piece: 'pieces',
}
