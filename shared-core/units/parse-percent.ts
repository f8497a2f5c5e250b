import Big from 'big.js'
import { ok } from '../result.ts'
import { formatNumber, withoutTrailingZeros } from './format-number.ts'
import type { Fraction } from './fraction.ts'
import { parseNumber } from './parse-number.ts'
import {
  type DecimalMark,
  type ParseOptions,
  type ParseResult,
  quoted,
  refuseFigure,
} from './parse-options.ts'
import { percentOf, type Ratio, ratio, ratioFromPercent } from './ratio.ts'
import { roundHalfAway } from './rounding.ts'
import { tidyText } from './tidy-text.ts'

/**
 * An exact ratio from a percentage: `40 %`, `6,5%`, `40` (percent also without the sign).
 *
 * Refusals: `empty`, `not-a-number`, `ambiguous-number`, `negative`, `too-fine` (a third has no
 * exact decimal), `too-large` above 100 000 %.
 */
export function parsePercent(text: string, options: ParseOptions = {}): ParseResult<Ratio> {
  const number = parseNumber(tidyText(text).replace(/ ?(?:%|percent)$/i, ''), {
    typed: text,
    ...options,
  })
  if (!number.ok) return number
  const percent = terminatingDecimal(number.value)
  if (percent === undefined) {
    return refuseFigure(options, {
      code: 'too-fine',
      message: `${quoted(text)} has no exact decimal.`,
      next: 'Type it as a decimal, such as 33.33 %.',
    })
  }
  if (percent.abs().gt(100_000)) {
    return refuseFigure(options, {
      code: 'too-large',
      message: `${quoted(text)} is more than any percentage here can be.`,
      next: 'Type a smaller percentage, such as 40 %.',
    })
  }
  const value = ratioFromPercent(percent)
  return ok({ value, understood: formatPercentExactly(value, options.decimal ?? '.') })
}

/**
 * A ratio in percent with at most `digits` decimals, ties away from zero, no zeros at the end.
 *
 * @example formatPercent(ratio('0.3988'), { decimal: '.', digits: 1 }) // 39.9 %
 */
export function formatPercent(
  value: Ratio,
  style: Readonly<{ decimal: DecimalMark; digits: number }>,
): string {
  return formatPercentExactly(ratio(roundHalfAway(value, style.digits + 2)), style.decimal)
}

function formatPercentExactly(value: Ratio, mark: DecimalMark): string {
  return `${formatNumber(withoutTrailingZeros(percentOf(value)), mark)} %`
}

/** The fraction as a decimal when its denominator is made of twos and fives only. */
function terminatingDecimal(value: Fraction): Big | undefined {
  let rest = value.denominator
  let scale = 0
  while (rest % 10n === 0n) [rest, scale] = [rest / 10n, scale + 1]
  while (rest % 5n === 0n) [rest, scale] = [rest / 5n, scale + 1]
  while (rest % 2n === 0n) [rest, scale] = [rest / 2n, scale + 1]
  if (rest !== 1n) return undefined
  const scaled = (value.numerator * 10n ** BigInt(scale)) / value.denominator
  return new Big(scaled).times(new Big(10).pow(-scale))
}
