import { parseCount } from '../../../shared-core/units/parse-count.ts'
import { parseThread } from '../../../shared-core/units/parse-length.ts'
import { parseMass } from '../../../shared-core/units/parse-mass.ts'
import type { DecimalMark, ParseResult } from '../../../shared-core/units/parse-options.ts'

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

/** What is written after a quantity's field when no unit is typed. */
export const unitWords: Readonly<Record<MaterialUnit, string>> = {
  mg: 'g',
  mm: 'm',
  piece: 'pieces',
}
