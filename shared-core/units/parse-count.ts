import { ok } from '../result.ts'
import { type Count, count } from './count.ts'
import { formatCount } from './format-number.ts'
import { parseNumber } from './parse-number.ts'
import { type ParseOptions, type ParseResult, quoted, refuseFigure } from './parse-options.ts'
import { tidyText } from './tidy-text.ts'

const PIECES = /(\d)\s*(?:pcs?|pieces?|beads?|st|stk|stück)\.?$/i

/**
 * A whole number from `48`, `12 500`, `20 pcs`; `1.200` only with a decimal hint.
 *
 * Refusals: `empty`, `not-a-number`, `ambiguous-number`, `negative`, `not-whole`, `too-large`.
 */
export function parseCount(text: string, options: ParseOptions = {}): ParseResult<Count> {
  const number = parseNumber(tidyText(text).replace(PIECES, '$1'), { typed: text, ...options })
  if (!number.ok) return number
  if (number.value.denominator !== 1n) {
    return refuseFigure(options, {
      code: 'not-whole',
      message: `${quoted(text)} is not a whole number.`,
      next: 'Type a whole number, such as 48.',
    })
  }
  const whole = Number(number.value.numerator)
  if (Math.abs(whole) > 1_000_000_000_000) {
    return refuseFigure(options, {
      code: 'too-large',
      message: `${quoted(text)} is more than any workshop holds.`,
      next: 'Type a smaller number.',
    })
  }
  const value = count(whole)
  return ok({ value, understood: formatCount(value) })
}
