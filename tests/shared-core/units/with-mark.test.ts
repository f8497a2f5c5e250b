import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseExtent } from '../../../shared-core/chart/outlines/parse-extent.ts'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { parseCount } from '../../../shared-core/units/parse-count.ts'
import { parseDuration } from '../../../shared-core/units/parse-duration.ts'
import { parseGeometry, parseThread } from '../../../shared-core/units/parse-length.ts'
import { parseMass } from '../../../shared-core/units/parse-mass.ts'
import { parseMoney } from '../../../shared-core/units/parse-money.ts'
import type { DecimalMark, ParseResult } from '../../../shared-core/units/parse-options.ts'
import { parsePercent } from '../../../shared-core/units/parse-percent.ts'
import { parseSpread } from '../../../shared-core/units/parse-spread.ts'
import { withMark } from '../../../shared-core/units/with-mark.ts'

type Parser = (text: string, decimal: DecimalMark | undefined) => ParseResult<unknown>

const currency = currencyCode('EUR')
const PARSERS: readonly (readonly [string, Parser])[] = [
  ['parseMass', (text, decimal) => parseMass(text, { decimal })],
  ['parseThread', (text, decimal) => parseThread(text, { decimal })],
  ['parseGeometry', (text, decimal) => parseGeometry(text, { decimal, unit: 'mm' })],
  ['parseDuration', (text, decimal) => parseDuration(text, { decimal })],
  ['parseMoney', (text, decimal) => parseMoney(text, { decimal, currency })],
  ['parseCount', (text, decimal) => parseCount(text, { decimal })],
  ['parsePercent', (text, decimal) => parsePercent(text, { decimal })],
  ['parseSpread', (text, decimal) => parseSpread(text, { decimal, basis: 'measured' })],
  ['parseExtent', (text, decimal) => parseExtent(text, { decimal })],
]

const pieces = [
  '1',
  '25',
  '1/3',
  '.',
  ',',
  ' ',
  '-',
  'g',
  'mm',
  'h',
  '€',
  '%',
  '±',
  '(',
  'to',
  'zwölf',
]
const typed = fc
  .array(fc.constantFrom(...pieces, '99999999999999999'), { maxLength: 6 })
  .map((parts) => parts.join(''))

/** What a refusal says to do next, without the readings of an ambiguous text, which quote it. */
const nextOf = (result: ParseResult<unknown>) => (result.ok ? '' : result.error.next)

describe.each(PARSERS)('what %s accepts', (_, parse) => {
  it('is shown with the mark of the workshop, whatever was typed', () => {
    fc.assert(
      fc.property(typed, (text) => {
        expect(nextOf(parse(text, ','))).not.toMatch(/\d\.\d/)
        expect(nextOf(parse(text, '.'))).not.toMatch(/\d,\d/)
      }),
    )
  })

  it('differs by the mark alone', () => {
    fc.assert(
      fc.property(fc.constantFrom('', 'zwölf', '-1 g', '1/3', '(', '5 parsecs'), (text) => {
        const [point, comma] = [parse(text, '.'), parse(text, ',')]
        expect(withMark(nextOf(point), ',')).toBe(nextOf(comma))
      }),
    )
  })
})

it.each([
  ['parseMass', 'zwölf', '12.5 g', '12,5 g'],
  ['parseThread', 'zwölf', '1.5 m', '1,5 m'],
  ['parseCount', '', '12.5', '12,5'],
  ['parseCount', 'zwölf', 'such as 12.5.', 'such as 12,5.'],
  ['parsePercent', '1/3', '33.33 %', '33,33 %'],
  ['parseSpread', '1 (2 to 3)', '1.6 (1.5 to 1.7)', '1,6 (1,5 to 1,7)'],
  ['parseExtent', '0', '1.5 in', '1,5 in'],
] as const)('%s of “%s” shows %s, or %s', (name, text, point, comma) => {
  const parse = PARSERS.find(([of]) => of === name)?.[1]
  if (parse === undefined) throw new Error(`expected ${name} among the parsers`)
  expect(nextOf(parse(text, '.'))).toContain(point)
  expect(nextOf(parse(text, ','))).toContain(comma)
})

it('shows both marks where none is known', () => {
  expect(nextOf(parseCount('zwölf'))).toBe(
    'Type digits with one decimal mark, such as 12.5 or 12,5.',
  )
})

it('leaves a sentence without decimals, and one for a point, as it is', () => {
  expect(withMark('Type 40 mm. 24 beads.', ',')).toBe('Type 40 mm. 24 beads.')
  expect(withMark('Type 1.5 in.', '.')).toBe('Type 1.5 in.')
  expect(withMark('Type 1.5 in.', undefined)).toBe('Type 1.5 in.')
})
