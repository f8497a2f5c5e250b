import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatMass, formatMassExactly } from '../../../shared-core/units/format-mass.ts'
import { massMg } from '../../../shared-core/units/mass.ts'
import { parseMass } from '../../../shared-core/units/parse-mass.ts'

describe('parseMass', () => {
  it.each([
    ['12,5 g', 12_500, '12.5 g'],
    ['12.5', 12_500, '12.5 g'],
    ['12.5g', 12_500, '12.5 g'],
    ['1/2 oz', 14_175, '14.175 g'],
    ['½ oz.', 14_175, '14.175 g'],
    ['1 1/2 OZ', 42_524, '42.524 g'],
    ['1.250,00', 1_250_000, '1250 g'],
    ['1 245,50 g', 1_245_500, '1245.5 g'],
    ['2 kg', 2_000_000, '2000 g'],
    ['350 mg', 350, '0.35 g'],
    ['0 g', 0, '0 g'],
    ['1 lb', 453_592, '453.592 g'],
    ['1 lb 2 oz', 510_291, '510.291 g'],
    ['12,5 grams', 12_500, '12.5 g'],
    ['18,45\u00a0g', 18_450, '18.45 g'],
  ])('reads %j as %i mg', (text, value, understood) => {
    expect(parseMass(text)).toEqual({ ok: true, value: { value, understood } })
  })

  it('restates with the decimal mark it is told', () => {
    expect(parseMass('1.245,50', { decimal: ',' })).toMatchObject({
      value: { value: 1_245_500, understood: '1245,5 g' },
    })
  })

  it('reads a bare number in the unit it is told', () => {
    expect(parseMass('350', { unit: 'mg' })).toMatchObject({ value: { value: 350 } })
  })

  it('refuses what could be a thousand grams or one, and names both', () => {
    expect(parseMass('1,245 g', { field: 'onHand' })).toEqual({
      ok: false,
      error: {
        code: 'ambiguous-number',
        message: '“1,245” can be read as 1245 or as 1.245.',
        next: expect.stringContaining('Type 1245, or 1.2450'),
        field: 'onHand',
      },
    })
  })

  it.each([
    ['−5 g', 'negative'],
    ['12.5 q', 'unknown-unit'],
    ['12.5 toString', 'unknown-unit'],
    ['2 m', 'unknown-unit'],
    ['g', 'not-a-measure'],
    ['NaN', 'not-a-measure'],
    ['twelve', 'not-a-measure'],
    ['2 oz 1 lb', 'not-a-measure'],
    ['1 kg 5', 'not-a-measure'],
    ['5 2', 'not-a-number'],
    ['', 'empty'],
    ['999999999 kg', 'too-large'],
  ])('refuses %j: %s', (text, code) => {
    const result = parseMass(text)
    expect(result).toMatchObject({ ok: false, error: { code } })
    if (!result.ok) expect(result.error.next).toContain('Type')
  })

  it('takes a correction below zero where it is allowed', () => {
    expect(parseMass('−5 g', { allowNegative: true })).toMatchObject({
      value: { value: -5000, understood: '−5 g' },
    })
  })

  it('rounds what is finer than a milligram to the even one', () => {
    expect(parseMass('0.0125 mg')).toMatchObject({ value: { value: 0 } })
    expect(parseMass('2.5 mg')).toMatchObject({ value: { value: 2 } })
    expect(parseMass('3.5 mg')).toMatchObject({ value: { value: 4 } })
  })

  it('reads back every mass it restates', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e9 }), fc.constantFrom('.', ','), (mg, mark) => {
        const decimal = mark === '.' ? '.' : ','
        const text = formatMassExactly(massMg(mg), decimal)
        expect(parseMass(text, { decimal })).toEqual({
          ok: true,
          value: { value: mg, understood: text },
        })
      }),
    )
  })
})

describe('formatMass', () => {
  it.each([
    [18_449, '18.4 g'],
    [4_050, '4.05 g'],
    [850, '0.85 g'],
    [99, '99 mg'],
    [0, '0 g'],
    [9_994, '9.99 g'],
    [9_995, '10.0 g'],
    [99_949, '99.9 g'],
    [99_950, '100 g'],
    [245_499, '245 g'],
    [1_245_500, '1.25 kg'],
    [-18_449, '−18.4 g'],
  ])('%i mg is %s', (mg, text) => {
    expect(formatMass(massMg(mg), '.')).toBe(text)
  })

  it('takes the decimal mark as an argument', () => {
    expect(formatMass(massMg(18_449), ',')).toBe('18,4 g')
  })
})
