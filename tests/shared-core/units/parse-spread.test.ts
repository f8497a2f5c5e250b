import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatSpread } from '../../../shared-core/units/format-spread.ts'
import { parseSpread } from '../../../shared-core/units/parse-spread.ts'

const read = (text: string, decimal: '.' | ',' = ',') =>
  parseSpread(text, { decimal, basis: 'measured', unit: 'mm' })

describe('parseSpread', () => {
  it.each([
    ['1,6', 1.55, 1.6, 1.65],
    ['1,60 mm', 1.595, 1.6, 1.605],
    ['1.6', 1.55, 1.6, 1.65],
    ['200', 199.5, 200, 200.5],
    ['1/2', 0.5, 0.5, 0.5],
    ['1,5–1,7', 1.5, 1.6, 1.7],
    ['1,5 - 1,7 mm', 1.5, 1.6, 1.7],
    ['0,1–0,2', 0.1, 0.15, 0.2],
    ['1,5 mm to 1,7 mm', 1.5, 1.6, 1.7],
    ['1,5 mm – 1,7 mm', 1.5, 1.6, 1.7],
    ['1,6 ± 0,1', 1.5, 1.6, 1.7],
    ['1,6 mm +/- 0,1 mm', 1.5, 1.6, 1.7],
    ['1,6 (1,4 to 1,7)', 1.4, 1.6, 1.7],
    ['1,6 mm (1,4–1,7)', 1.4, 1.6, 1.7],
    ['0', 0, 0, 0.5],
  ])('reads %s', (text, low, value, high) => {
    expect(read(text)).toMatchObject({
      ok: true,
      value: { value: { low, value, high, basis: 'measured' } },
    })
  })

  it.each([
    ['', 'empty'],
    ['wide', 'not-a-number'],
    ['1,7 to 1,5', 'not-a-range'],
    ['1,6 (1,7 to 1,9)', 'not-a-range'],
    ['1,6 (about)', 'not-a-range'],
    ['1,6 to', 'not-a-number'],
    ['-2', 'negative'],
    ['1,6 g', 'not-a-number'],
  ])('refuses %j as %s', (text, code) => {
    expect(read(text)).toMatchObject({ ok: false, error: { code } })
  })

  it('says what it understood', () => {
    const parsed = read('1,6')
    expect(parsed.ok && parsed.value.understood).toBe('1,6 mm (1,55 to 1,65)')
  })

  it('reads back what formatSpread writes, with either mark', () => {
    const figure = fc.integer({ min: 0, max: 60_000_000 }).map((micro) => micro / 1e6)
    fc.assert(
      fc.property(
        fc.tuple(figure, figure, figure),
        fc.constantFrom('.' as const, ',' as const),
        fc.constantFrom('mm', undefined),
        (figures, decimal, unit) => {
          const [low = 0, value = 0, high = 0] = figures.toSorted((a, b) => a - b)
          fc.pre(low < high)
          const spread = { low, value, high, basis: 'estimated' as const }
          const text = formatSpread(spread, { decimal, unit })
          const parsed = parseSpread(text, { decimal, unit, basis: 'estimated' })
          expect(parsed.ok && parsed.value.value).toEqual(spread)
        },
      ),
    )
  })

  it('answers any text with a range in order or a refusal', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 30 }), (text) => {
        const parsed = read(text)
        const { low, value, high } = parsed.ok ? parsed.value.value : { low: 0, value: 0, high: 0 }
        expect(low <= value && value <= high).toBe(true)
        expect(parsed.ok || parsed.error.next !== '').toBe(true)
      }),
    )
  })
})
