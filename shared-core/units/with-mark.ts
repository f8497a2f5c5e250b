import type { DecimalMark } from './parse-options.ts'

/**
 * A sentence of ours with its figures written with the decimal mark of the workshop; the point where none
 * is known. For examples and figures only: a quotation, a day or a name keeps what it has.
 *
 * @example withMark('12.5 g, 350 mg or 1/2 oz', ',') // 12,5 g, 350 mg or 1/2 oz
 */
export function withMark(sentence: string, decimal: DecimalMark | undefined): string {
  return decimal === ',' ? sentence.replace(/(\d)\.(\d)/g, '$1,$2') : sentence
}
