import type { Refusal } from '../refusal.ts'
import { ok, type Result } from '../result.ts'
import { addFractions, type Fraction, fraction, fractionOfDecimal } from './fraction.ts'
import { type DecimalMark, type ParseOptions, quoted, refuseFigure } from './parse-options.ts'
import { tidyText } from './tidy-text.ts'

const LONGEST_NUMBER = 40
const MARKS: readonly DecimalMark[] = ['.', ',']

/**
 * The exact value of a typed number: `12,5`, `1.250,00`, `1 245,50`, `1'245.5`, `1/2`, `2 1/2`, `−3`.
 *
 * Dots, commas, spaces and apostrophes may group thousands; the decimal mark is the one reading
 * that fits. Where two readings fit (`1,245`) `options.decimal` decides, and without it the text is
 * refused with both readings named.
 *
 * Refusals: `empty`, `not-a-number`, `ambiguous-number`, `negative`.
 */
export function parseNumber(text: string, options: ParseOptions): Result<Fraction, Refusal> {
  const tidy = tidyText(text)
  if (tidy === '') return refuseFigure(options, EMPTY)
  const sign = /^[+-]/.exec(tidy)?.[0] ?? ''
  const body = tidy.slice(sign.length).trim()
  const typed = options.typed ?? text
  if (body.length > LONGEST_NUMBER) return refuseFigure(options, notANumber(typed, options))
  const magnitude = mixedFraction(body) ?? decimalNumber(body, options)
  if (magnitude === undefined) return refuseFigure(options, notANumber(typed, options))
  if (magnitude.kind === 'ambiguous') return refuseFigure(options, ambiguous(typed, magnitude))
  if (sign !== '-') return ok(magnitude.value)
  if (magnitude.value.numerator > 0n && !options.allowNegative) {
    return refuseFigure(options, negative(typed))
  }
  return ok({ ...magnitude.value, numerator: -magnitude.value.numerator })
}

type Reading = Readonly<{ kind: 'value'; value: Fraction }>
type Ambiguous = Readonly<{ kind: 'ambiguous'; readings: readonly string[] }>

const EMPTY = {
  code: 'empty',
  message: 'Nothing was typed.',
  next: 'Type a number, such as 12.5.',
} as const

/** `3/4` or `2 1/2`. */
function mixedFraction(body: string): Reading | undefined {
  const match = /^(?:(\d+) )?(\d+) ?\/ ?(\d+)$/.exec(body)
  if (!match || BigInt(match[3] ?? 0) === 0n) return undefined
  const part = fraction(BigInt(match[2] ?? 0), BigInt(match[3] ?? 1))
  return { kind: 'value', value: addFractions(fraction(BigInt(match[1] ?? 0)), part) }
}

function decimalNumber(body: string, options: ParseOptions): Reading | Ambiguous | undefined {
  const readings = readingsOf(body, options.decimal)
  const [first] = readings
  if (first === undefined) return undefined
  if (readings.length > 1) return { kind: 'ambiguous', readings }
  return { kind: 'value', value: fractionOfDecimal(first) }
}

/** Every plain decimal the text can stand for; a told mark is tried first and alone if it fits. */
function readingsOf(body: string, told: DecimalMark | undefined): readonly string[] {
  const all = MARKS.map((mark) => ({ mark, reading: readWithMark(body, mark) }))
  const fitting = all.filter((entry) => entry.reading !== undefined)
  const asTold = fitting.filter((entry) => entry.mark === told)
  const chosen = asTold.length > 0 ? asTold : fitting
  return [...new Set(chosen.map((entry) => entry.reading ?? ''))]
}

/** The text read with `mark` before the decimals, its whole part grouped by one other sign or none. */
function readWithMark(body: string, mark: DecimalMark): string | undefined {
  const at = body.indexOf(mark)
  const whole = at < 0 ? body : body.slice(0, at)
  const decimals = at < 0 ? '' : body.slice(at + 1)
  if (at >= 0 && !/^\d+$/.test(decimals)) return undefined
  const digits = whole === '' && at === 0 ? '0' : ungrouped(whole)
  if (digits === undefined) return undefined
  return decimals === '' ? digits : `${digits}.${decimals}`
}

function ungrouped(whole: string): string | undefined {
  if (/^\d+$/.test(whole)) return whole.replace(/^0+(?=\d)/, '')
  // One grouping sign throughout: the back reference holds the groups to the first one's sign.
  const grouped = /^[1-9]\d{0,2}([.,' ])\d{3}(?:\1\d{3})*$/
  return grouped.test(whole) ? whole.replace(/[.,' ]/g, '') : undefined
}

function notANumber(text: string, { decimal }: ParseOptions): Omit<Refusal, 'field' | 'line'> {
  const either = decimal === undefined ? ' or 12,5' : ''
  return {
    code: 'not-a-number',
    message: `${quoted(text)} is not a number.`,
    next: `Type digits with one decimal mark, such as 12.5${either}.`,
  }
}

function ambiguous(text: string, found: Ambiguous): Omit<Refusal, 'field' | 'line'> {
  const [whole = '', decimal = ''] = [...found.readings]
    .sort((a, b) => b.length - a.length)
    .reverse()
  return {
    code: 'ambiguous-number',
    message: `${quoted(text)} can be read as ${whole} or as ${decimal}.`,
    next: `Type ${whole}, or ${decimal}0 for the smaller one; or choose the decimal mark in the settings.`,
  }
}

function negative(text: string): Omit<Refusal, 'field' | 'line'> {
  return {
    code: 'negative',
    message: `${quoted(text)} is below zero.`,
    next: 'Type a number from zero up.',
  }
}
