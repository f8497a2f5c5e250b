import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatNumber } from '../../../shared-core/units/format-number.ts'
import { fraction, fractionOfDecimal } from '../../../shared-core/units/fraction.ts'
import { parseNumber } from '../../../shared-core/units/parse-number.ts'

describe('parseNumber', () => {
  it.each([
    ['12', '12'],
    ['12.5', '12.5'],
    ['12,5', '12.5'],
    ['.5', '0.5'],
    [',5', '0.5'],
    ['0,125', '0.125'],
    ['0.125', '0.125'],
    ['1.250,00', '1250'],
    ['1,250.00', '1250'],
    ['1.250.000', '1250000'],
    ['1 245', '1245'],
    ['1 245,50', '1245.5'],
    ['1 245,500', '1245.5'],
    ["1'245.5", '1245.5'],
    ['1’245.5', '1245.5'],
    ['1\u202f245,5', '1245.5'],
    ['1\u00a0245,5', '1245.5'],
    ['1245.500', '1245.5'],
    ['007', '7'],
    ['+3', '3'],
  ])('reads %j as %s', (text, decimal) => {
    expect(parseNumber(text, {})).toEqual({ ok: true, value: fractionOfDecimal(decimal) })
  })

  it.each([
    ['1/2', 1, 2],
    ['2 1/2', 5, 2],
    ['½', 1, 2],
    ['2½', 5, 2],
    ['2⁄3', 2, 3],
  ])('reads the fraction %j', (text, n, d) => {
    expect(parseNumber(text, {})).toEqual({ ok: true, value: fraction(n, d) })
  })

  it.each(['−3', '-3', '– 3', '－3'])(
    'reads the minus of %j where it may be below zero',
    (text) => {
      expect(parseNumber(text, { allowNegative: true })).toEqual({ ok: true, value: fraction(-3) })
      expect(parseNumber(text, {})).toMatchObject({ error: { code: 'negative' } })
    },
  )

  it('takes minus zero for zero', () => {
    expect(parseNumber('-0', {})).toEqual({ ok: true, value: fraction(0) })
  })

  it.each([
    ['1,245', '1245', '1.245'],
    ['1.245', '1245', '1.245'],
    ['12.500', '12500', '12.500'],
    ['999,999', '999999', '999.999'],
  ])('refuses %j, which is %s or %s', (text, whole, decimal) => {
    const result = parseNumber(text, { field: 'mass', line: 9 })
    expect(result).toMatchObject({
      ok: false,
      error: { code: 'ambiguous-number', field: 'mass', line: 9 },
    })
    if (result.ok) return
    expect(result.error.message).toBe(`“${text}” can be read as ${whole} or as ${decimal}.`)
    expect(result.error.next).toContain(`Type ${whole}, or ${decimal}0`)
  })

  it('is told by a decimal hint', () => {
    expect(parseNumber('1,245', { decimal: ',' })).toEqual({
      ok: true,
      value: fractionOfDecimal('1.245'),
    })
    expect(parseNumber('1,245', { decimal: '.' })).toEqual({ ok: true, value: fraction(1245) })
    expect(parseNumber('1.200', { decimal: ',' })).toEqual({ ok: true, value: fraction(1200) })
  })

  it('reads what has one reading whatever the hint', () => {
    expect(parseNumber('12.5', { decimal: ',' })).toEqual({ ok: true, value: fraction(25, 2) })
  })

  it.each([
    'zwölf',
    'NaN',
    'Infinity',
    '1e3',
    '0x10',
    '1..2',
    '1,2,3',
    '12,34,567',
    '1 23',
    '1/0',
    '5 2',
    '1 ,5',
    '5.',
    '--1',
    '1-2',
    '1.250,00,0',
    '٣',
    '9'.repeat(60),
  ])('refuses %j', (text) => {
    expect(parseNumber(text, {})).toMatchObject({ ok: false, error: { code: 'not-a-number' } })
  })

  it('refuses nothing as nothing', () => {
    expect(parseNumber(' \u00a0 ', {})).toMatchObject({ error: { code: 'empty' } })
  })

  it('reads back every number it writes, with either mark', () => {
    const value = fc.tuple(
      fc.integer({ min: -1e9, max: 1e9 }),
      fc.nat(99),
      fc.constantFrom('.', ','),
    )
    fc.assert(
      fc.property(value, ([whole, hundredths, mark]) => {
        const decimal = `${whole}.${String(hundredths).padStart(2, '0')}`
        const decimalMark = mark === '.' ? '.' : ','
        const text = formatNumber(decimal, decimalMark)
        expect(parseNumber(text, { decimal: decimalMark, allowNegative: true })).toEqual({
          ok: true,
          value: fractionOfDecimal(decimal),
        })
        expect(parseNumber(text, { allowNegative: true })).toMatchObject({ ok: true })
      }),
    )
  })

  it('answers any text with a value or a sentence, never with a throw', () => {
    const typed = fc.oneof(
      fc.string({
        unit: fc.constantFrom(...'12 \u00a0\u202f٣½²−–,.\u{1f4ff}é', '\ud800'),
        maxLength: 50,
      }),
      fc.string({ unit: fc.constantFrom(..."0123456789.,-+/ 'e½"), maxLength: 12 }),
    )
    fc.assert(
      fc.property(typed, (text) => {
        const result = parseNumber(text, {})
        if (result.ok) expect(result.value.numerator).toBeGreaterThanOrEqual(0n)
        else expect(result.error.message).toMatch(/\.$/)
      }),
      { numRuns: 500 },
    )
  })
})
