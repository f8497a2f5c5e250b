import { ok } from '../result.ts'
import { formatMassExactly } from './format-mass.ts'
import { type Fraction, fraction } from './fraction.ts'
import { type MassMg, massMg } from './mass.ts'
import { type MeasureKind, parseWholeMeasure } from './parse-measure.ts'
import type { ParseOptions, ParseResult } from './parse-options.ts'

/** A unit a bare number of mass may be read in. */
export type MassUnit = 'mg' | 'g' | 'kg' | 'oz'

const MG = fraction(1)
const G = fraction(1000)
const KG = fraction(1_000_000)
// International avoirdupois pound of 1959: 453.59237 g exactly, the ounce a sixteenth of it.
const LB = fraction(45_359_237, 100)
const OZ = fraction(45_359_237, 1600)

const FACTORS: Readonly<Record<string, Fraction>> = {
  mg: MG,
  milligram: MG,
  milligrams: MG,
  g: G,
  gram: G,
  grams: G,
  gramme: G,
  grammes: G,
  gramm: G,
  kg: KG,
  kilo: KG,
  kilos: KG,
  kilogram: KG,
  kilograms: KG,
  oz: OZ,
  ounce: OZ,
  ounces: OZ,
  lb: LB,
  lbs: LB,
  pound: LB,
  pounds: LB,
}

const MASS: MeasureKind = {
  noun: 'a mass',
  examples: '12.5 g, 350 mg or 1/2 oz',
  factors: FACTORS,
}

/**
 * Mass in whole mg from `12,5 g`, `12.5`, `1/2 oz`, `1 245,50 g`, `350 mg`, `1 lb 2 oz`.
 *
 * A bare number is grams unless `options.unit` says otherwise. Finer than a milligram is rounded
 * half-even. Refusals: `empty`, `not-a-number`, `ambiguous-number`, `negative`, `unknown-unit`,
 * `not-a-measure`, `too-large`.
 */
export function parseMass(
  text: string,
  options: ParseOptions & Readonly<{ unit?: MassUnit | undefined }> = {},
): ParseResult<MassMg> {
  const whole = parseWholeMeasure(text, MASS, { ...options, bareUnit: options.unit ?? 'g' })
  if (!whole.ok) return whole
  const value = massMg(whole.value)
  return ok({ value, understood: formatMassExactly(value, options.decimal ?? '.') })
}
