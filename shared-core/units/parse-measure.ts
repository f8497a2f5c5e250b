import type { Refusal } from '../refusal.ts'
import { ok, type Result } from '../result.ts'
import {
  addFractions,
  compareFractions,
  type Fraction,
  fraction,
  multiplyFractions,
} from './fraction.ts'
import { parseNumber } from './parse-number.ts'
import { type ParseOptions, quoted, refuseFigure } from './parse-options.ts'
import { roundFraction } from './rounding.ts'
import { tidyText } from './tidy-text.ts'

/** A kind of measure people type: its units by every spelling, each as a factor to the base unit. */
export type MeasureKind = Readonly<{
  /** With its article, for a sentence: `a mass`. */
  noun: string
  /** What is accepted, for a sentence, its decimals with a point: `12.5 g, 350 mg or 1/2 oz`. */
  examples: string
  /** Spelling in lower case -> exact factor to the base unit. */
  factors: Readonly<Record<string, Fraction>>
}>

/**
 * The exact measure in base units of `12,5 g`, `5 ft 3 in` or a bare number in `bareUnit`.
 *
 * Several parts add up when each has a unit smaller than the one before. Refusals: those of
 * `parseNumber`, `unknown-unit`, `missing-unit`, `not-a-measure`.
 */
export function parseMeasure(
  text: string,
  kind: MeasureKind,
  options: ParseOptions & Readonly<{ bareUnit?: string | undefined }>,
): Result<Fraction, Refusal> {
  const tidy = tidyText(text).toLowerCase()
  if (tidy === '') return refuseFigure(options, empty(kind))
  const typed = options.typed ?? text
  const sign = /^[+-]/.exec(tidy)?.[0] ?? ''
  const parts = splitParts(tidy.slice(sign.length))
  if (parts === undefined) return refuseFigure(options, notAMeasure(typed, kind))
  const sum = sumParts(parts, kind, { ...options, text: typed })
  if (!sum.ok || sign !== '-' || sum.value.numerator === 0n) return sum
  if (!options.allowNegative) return refuseFigure(options, belowZero(typed, kind))
  return ok({ ...sum.value, numerator: -sum.value.numerator })
}

/**
 * `parseMeasure` rounded half-even to whole base units, for mass, thread and time.
 *
 * Refusals: those of `parseMeasure`, `too-large`.
 */
export function parseWholeMeasure(
  text: string,
  kind: MeasureKind,
  options: ParseOptions & Readonly<{ bareUnit?: string | undefined }>,
): Result<number, Refusal> {
  const exact = parseMeasure(text, kind, options)
  if (!exact.ok) return exact
  const limit = fraction(LARGEST_WHOLE)
  const size = { ...exact.value, numerator: absolute(exact.value.numerator) }
  if (compareFractions(size, limit) > 0) {
    return refuseFigure(options, {
      code: 'too-large',
      message: `${quoted(options.typed ?? text)} is larger than any workshop holds.`,
      next: `Type ${kind.noun} such as ${kind.examples}.`,
    })
  }
  return ok(roundFraction(exact.value, 'half-even'))
}

// A thousand tonnes, a thousand kilometres, or a human lifetime of seconds: sums stay exact.
const LARGEST_WHOLE = 1_000_000_000_000

type Part = Readonly<{ number: string; unit: string }>

function splitParts(tidy: string): readonly Part[] | undefined {
  const pattern = /\s*([\d.,'/ ]*\d)\s*([\p{L}µ]*)\.?\s*/uy
  const parts: Part[] = []
  while (pattern.lastIndex < tidy.length) {
    const match = pattern.exec(tidy)
    if (!match) return undefined
    parts.push({ number: match[1] ?? '', unit: match[2] ?? '' })
  }
  return parts
}

function sumParts(
  parts: readonly Part[],
  kind: MeasureKind,
  options: ParseOptions & Readonly<{ bareUnit?: string | undefined; text: string }>,
): Result<Fraction, Refusal> {
  let sum = fraction(0)
  let previous: Fraction | undefined
  for (const part of parts) {
    const bare = part.unit === ''
    if (bare && parts.length > 1) return refuseFigure(options, notAMeasure(options.text, kind))
    const factor = factorOf(bare ? options.bareUnit : part.unit, kind)
    if (!factor) {
      return refuseFigure(options, bare ? missingUnit(options.text, kind) : unknownUnit(part, kind))
    }
    if (previous && compareFractions(factor, previous) >= 0) {
      return refuseFigure(options, notAMeasure(options.text, kind))
    }
    const number = parseNumber(part.number, options)
    if (!number.ok) return number
    sum = addFractions(sum, multiplyFractions(number.value, factor))
    previous = factor
  }
  return ok(sum)
}

function factorOf(unit: string | undefined, kind: MeasureKind): Fraction | undefined {
  return unit !== undefined && Object.hasOwn(kind.factors, unit) ? kind.factors[unit] : undefined
}

type Sentence = Omit<Refusal, 'field' | 'line'>

function next(kind: MeasureKind): string {
  return `Type ${kind.noun} such as ${kind.examples}.`
}

function empty(kind: MeasureKind): Sentence {
  return { code: 'empty', message: 'Nothing was typed.', next: next(kind) }
}

function notAMeasure(text: string, kind: MeasureKind): Sentence {
  return {
    code: 'not-a-measure',
    message: `${quoted(text)} is not ${kind.noun}.`,
    next: next(kind),
  }
}

function missingUnit(text: string, kind: MeasureKind): Sentence {
  return { code: 'missing-unit', message: `${quoted(text)} has no unit.`, next: next(kind) }
}

function unknownUnit(part: Part, kind: MeasureKind): Sentence {
  return {
    code: 'unknown-unit',
    message: `${quoted(part.unit)} is not a unit of ${kind.noun.replace(/^an? /, '')}.`,
    next: next(kind),
  }
}

function belowZero(text: string, kind: MeasureKind): Sentence {
  return { code: 'negative', message: `${quoted(text)} is below zero.`, next: next(kind) }
}

function absolute(value: bigint): bigint {
  return value < 0n ? -value : value
}
