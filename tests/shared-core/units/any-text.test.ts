import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { parseCount } from '../../../shared-core/units/parse-count.ts'
import { parseDate } from '../../../shared-core/units/parse-date.ts'
import { parseDuration } from '../../../shared-core/units/parse-duration.ts'
import { parseGeometry, parseThread } from '../../../shared-core/units/parse-length.ts'
import { parseMass } from '../../../shared-core/units/parse-mass.ts'
import { parseMoney } from '../../../shared-core/units/parse-money.ts'
import type { ParseResult } from '../../../shared-core/units/parse-options.ts'
import { parsePercent } from '../../../shared-core/units/parse-percent.ts'

const EUR = currencyCode('EUR')
const money = (text: string) => parseMoney(text, { currency: EUR })

const PARSERS: readonly (readonly [string, (text: string) => ParseResult<unknown>])[] = [
  ['parseMass', parseMass],
  ['parseThread', parseThread],
  ['parseGeometry', parseGeometry],
  ['parseDuration', parseDuration],
  ['parseMoney', money],
  ['parseCount', parseCount],
  ['parsePercent', parsePercent],
  ['parseDate', parseDate],
]

const pieces = [
  '1',
  '25',
  '250',
  '.',
  ',',
  ' ',
  '-',
  '−',
  '/',
  ':',
  "'",
  '"',
  'g',
  'oz',
  'h',
  'min',
]
const more = ['m', 'in', '€', 'EUR', '%', '½', 'e', 'NaN', '٣', '\u00a0', 'Feb', '2026', '\ud800']
const typed = fc
  .array(fc.constantFrom(...pieces, ...more), { maxLength: 9 })
  .map((parts) => parts.join(''))

describe.each(PARSERS)('%s', (_, parse) => {
  it('answers any text with a restated value or a full sentence, never a float or a throw', () => {
    fc.assert(
      fc.property(fc.oneof(typed, fc.string({ maxLength: 30 })), (text) => {
        const result = parse(text)
        if (!result.ok) {
          expect(result.error.code).toMatch(/^[a-z-]+$/)
          expect(result.error.message).toMatch(/\.$/)
          expect(result.error.next).toMatch(/\.$/)
          return
        }
        expect(result.value.understood).not.toMatch(/NaN|undefined|Infinity|e[+-]/)
        if (typeof result.value.value === 'number') {
          expect(Number.isFinite(result.value.value)).toBe(true)
          if (parse !== parseGeometry) expect(Number.isSafeInteger(result.value.value)).toBe(true)
        }
      }),
      { numRuns: 1000 },
    )
  })

  it('is quick with a page pasted by mistake', () => {
    for (const piece of ['1', '.', '1 ', '1,', '-', '1a', ' x', "1'"]) {
      const before = performance.now()
      expect(parse(piece.repeat(20_000)).ok).toBe(false)
      expect(performance.now() - before).toBeLessThan(1000)
    }
  })
})

describe('a refusal', () => {
  it.each([
    ['parsePercent', parsePercent('−5 %'), '−5 %'],
    ['parseCount', parseCount('1.200 St'), '1.200 St'],
    ['parseMoney', money('€ 1,250'), '€ 1,250'],
    ['parseThread', parseThread('−5″'), '−5″'],
    ['parseDuration', parseDuration('-1:25'), '-1:25'],
  ])('of %s quotes what was typed', (_, result, typedText) => {
    expect(result).toMatchObject({
      ok: false,
      error: { message: expect.stringContaining(`“${typedText}”`) },
    })
  })
})
