import type { Refusal } from '../refusal.ts'
import { ok, type Result } from '../result.ts'
import { type CurrencyCode, minorDigits } from './currency.ts'
import { currencySymbol } from './currency-symbol.ts'
import { formatMoney } from './format-money.ts'
import { fraction, multiplyFractions } from './fraction.ts'
import { type Money, money } from './money.ts'
import { parseNumber } from './parse-number.ts'
import { type ParseOptions, type ParseResult, quoted, refuseFigure } from './parse-options.ts'
import { tidyText } from './tidy-text.ts'

/** What the parser of money is told; the currency always. */
export type MoneyOptions = ParseOptions & Readonly<{ currency: CurrencyCode }>

/**
 * Money in whole minor units from `€ 4,20`, `4.20`, `1.250,00 EUR`.
 *
 * A sign or code must be that of `options.currency`; more decimals than the currency has are
 * refused, not rounded. Refusals: `empty`, `not-a-number`, `ambiguous-number`, `negative`,
 * `wrong-currency`, `too-fine`, `too-large`.
 */
export function parseMoney(text: string, options: MoneyOptions): ParseResult<Money> {
  const figure = stripCurrency(text, options)
  if (!figure.ok) return figure
  const major = parseNumber(figure.value, { typed: text, ...options })
  if (!major.ok) return major
  const digits = minorDigits(options.currency)
  const minor = multiplyFractions(major.value, fraction(10n ** BigInt(digits)))
  if (minor.denominator !== 1n)
    return refuseFigure(options, tooFine(text, options.currency, digits))
  const amountMinor = Number(minor.numerator)
  if (Math.abs(amountMinor) > LARGEST_MINOR) return refuseFigure(options, tooLarge(text))
  const value = money(amountMinor, options.currency)
  return ok({ value, understood: formatMoney(value, { decimal: options.decimal ?? '.' }) })
}

// Ten billion in hundredths: a year's sums of such amounts still add exactly.
const LARGEST_MINOR = 1_000_000_000_000

// Longer than any amount with its code; also keeps the match below quick on a pasted page.
const LONGEST_AMOUNT = 80

/** The figure without the sign or code before or after it. */
function stripCurrency(text: string, options: MoneyOptions): Result<string, Refusal> {
  const tidy = tidyText(text)
  const match =
    tidy.length > LONGEST_AMOUNT
      ? null
      : /^([+-]?) ?([^\d+-]*?) ?([+-]?) ?([\d.,' ]*\d) ?(\D*)$/.exec(tidy)
  // Not shaped like money at all: leave it to the number parser’s sentence.
  if (!match) return ok(tidy)
  const [, signBefore = '', before = '', signInside = '', figure = '', after = ''] = match
  const marks = [before.trim(), after.trim()].filter((mark) => mark !== '' && !/^[.,]$/.test(mark))
  const foreign = marks.find((mark) => !isMarkOf(mark, options.currency))
  if (foreign !== undefined) return refuseFigure(options, wrongCurrency(foreign, options.currency))
  const leadingPoint = /^[.,]$/.test(before.trim()) ? before.trim() : ''
  return ok(`${signBefore}${signInside}${leadingPoint}${figure}`)
}

function isMarkOf(mark: string, currency: CurrencyCode): boolean {
  const typed = mark.toLowerCase()
  return [currency, currencySymbol(currency)].some((known) => known.toLowerCase() === typed)
}

type Sentence = Omit<Refusal, 'field' | 'line'>

function wrongCurrency(mark: string, currency: CurrencyCode): Sentence {
  return {
    code: 'wrong-currency',
    message: `${quoted(mark)} is not the currency here, which is ${currency}.`,
    next: `Type the amount in ${currency}, with ${currencySymbol(currency)} or with no sign.`,
  }
}

function tooFine(text: string, currency: CurrencyCode, digits: number): Sentence {
  return {
    code: 'too-fine',
    message: `${quoted(text)} has more decimals than ${currency}, which has ${digits}.`,
    next: `Round the amount to ${digits} decimals.`,
  }
}

function tooLarge(text: string): Sentence {
  return {
    code: 'too-large',
    message: `${quoted(text)} is larger than the books can hold.`,
    next: 'Type a smaller amount.',
  }
}
