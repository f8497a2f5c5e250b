import type { Refusal } from '../refusal.ts'
import { ok, type Result } from '../result.ts'
import { formatMillimetresExactly } from './format-length.ts'
import { compareFractions, type Fraction, fraction, fractionToNumber } from './fraction.ts'
import { type ThreadMm, threadMm } from './length.ts'
import { type MeasureKind, parseMeasure, parseWholeMeasure } from './parse-measure.ts'
import { type ParseOptions, type ParseResult, quoted, refuseFigure } from './parse-options.ts'

/** A unit a bare number of length may be read in. */
export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft' | 'yd'

/** What a parser of lengths may be told; a bare number is refused unless `unit` is given. */
export type LengthOptions = ParseOptions & Readonly<{ unit?: LengthUnit | undefined }>

const MM = fraction(1)
const CM = fraction(10)
const M = fraction(1000)
// International inch of 1959: 25.4 mm exactly.
const IN = fraction(254, 10)
const FT = fraction(3048, 10)
const YD = fraction(9144, 10)

const FACTORS: Readonly<Record<string, Fraction>> = {
  mm: MM,
  millimetre: MM,
  millimetres: MM,
  millimeter: MM,
  millimeters: MM,
  cm: CM,
  centimetre: CM,
  centimetres: CM,
  centimeter: CM,
  centimeters: CM,
  m: M,
  metre: M,
  metres: M,
  meter: M,
  meters: M,
  in: IN,
  inch: IN,
  inches: IN,
  ft: FT,
  foot: FT,
  feet: FT,
  yd: YD,
  yds: YD,
  yard: YD,
  yards: YD,
}

const LENGTH: MeasureKind = {
  noun: 'a length',
  examples: '18 cm, 1.5 m, 7 in or 2 yd',
  factors: FACTORS,
}

// A kilometre of finished work is a slip of the unit.
const LARGEST_GEOMETRY_MM = fraction(1_000_000)

/**
 * Length of thread in whole mm from `1,5 m`, `7 in`, `2 yd`, `5 ft 3 in`, `5'3"`.
 *
 * Finer than a millimetre is rounded half-even. Refusals: `empty`, `not-a-number`,
 * `ambiguous-number`, `negative`, `unknown-unit`, `missing-unit`, `not-a-measure`, `too-large`.
 */
export function parseThread(text: string, options: LengthOptions = {}): ParseResult<ThreadMm> {
  const whole = parseWholeMeasure(spellOutMarks(text), LENGTH, told(text, options))
  if (!whole.ok) return whole
  const value = threadMm(whole.value)
  return ok({ value, understood: formatMillimetresExactly(value, options.decimal ?? '.') })
}

/**
 * A width, height or diameter as a number of mm from the same texts as `parseThread`.
 *
 * Not rounded. Refusals: those of `parseThread`; `too-large` above a kilometre.
 */
export function parseGeometry(text: string, options: LengthOptions = {}): ParseResult<number> {
  const exact = withinGeometry(
    parseMeasure(spellOutMarks(text), LENGTH, told(text, options)),
    text,
    options,
  )
  if (!exact.ok) return exact
  const value = fractionToNumber(exact.value)
  return ok({ value, understood: formatMillimetresExactly(value, options.decimal ?? '.') })
}

function withinGeometry(
  exact: Result<Fraction, Refusal>,
  text: string,
  options: ParseOptions,
): Result<Fraction, Refusal> {
  if (!exact.ok || compareFractions(exact.value, LARGEST_GEOMETRY_MM) <= 0) return exact
  return refuseFigure(options, {
    code: 'too-large',
    message: `${quoted(text)} is longer than any finished work.`,
    next: `Type a length such as ${LENGTH.examples}.`,
  })
}

function told(
  text: string,
  options: LengthOptions,
): ParseOptions & Readonly<{ bareUnit?: string | undefined }> {
  const rewritten = spellOutMarks(text) !== text
  return { ...options, bareUnit: options.unit, ...(rewritten && { typed: text }) }
}

/** `5'3"` as `5 ft 3 in`, with every kind of quote or prime people's keyboards give. */
function spellOutMarks(text: string): string {
  return text.replace(/''|["\u2033\u201c\u201d]/g, ' in ').replace(/['\u2032\u2018\u2019]/g, ' ft ')
}
