import type { DecimalMark } from '../../../shared-core/units/parse-options.ts'

// One or two digits, or four and more, after the last mark can be no group of thousands.
const DECIMALS = /(?<mark>[.,])(?:\d{1,2}|\d{4,})(?!\d)/
// Two different marks: the later one stands before the decimals.
const BOTH = /\d[.,' ]\d{3}(?<mark>[.,])\d/

/**
 * The decimal mark that a file's own figures show, or nothing when none does (or they disagree
 * evenly).
 *
 * @param cells of the columns that hold figures
 */
export function guessDecimalMark(cells: readonly string[]): DecimalMark | undefined {
  let commas = 0
  let points = 0
  for (const cell of cells) {
    const mark = (BOTH.exec(cell) ?? DECIMALS.exec(cell))?.groups?.['mark']
    if (mark === ',') commas += 1
    if (mark === '.') points += 1
  }
  if (commas === points) return undefined
  return commas > points ? ',' : '.'
}
