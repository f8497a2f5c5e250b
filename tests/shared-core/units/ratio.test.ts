import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fraction } from '../../../shared-core/units/fraction.ts'
import { formatPercent, parsePercent } from '../../../shared-core/units/parse-percent.ts'
import {
  percentOf,
  RATIO_ZERO,
  ratio,
  ratioFromFraction,
  ratioFromPercent,
  ratioToFraction,
} from '../../../shared-core/units/ratio.ts'

describe('ratio', () => {
  it('is brought to its shortest plain form', () => {
    expect(ratio('0.0650')).toBe('0.065')
    expect(ratio('1e-7')).toBe('0.0000001')
    expect(ratio('-0')).toBe('0')
    expect(RATIO_ZERO).toBe('0')
  })

  it('throws for text that is no number', () => {
    for (const text of ['', 'half', '1,5', 'NaN']) expect(() => ratio(text)).toThrow()
  })

  it('rounds a fraction by name to so many places', () => {
    expect(ratioFromFraction(fraction(1, 3), 4, 'half-even')).toBe('0.3333')
    expect(ratioFromFraction(fraction(-1, 8), 2, 'half-away')).toBe('-0.13')
    expect(ratioFromFraction(fraction(1, 8), 2, 'half-even')).toBe('0.12')
  })

  it('goes to percent and back unchanged', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), (millionths) => {
        const value = ratioFromFraction(fraction(millionths, 1_000_000), 6, 'half-even')
        expect(ratioFromPercent(percentOf(value))).toBe(value)
        expect(ratioToFraction(value)).toEqual(fraction(millionths, 1_000_000))
      }),
    )
  })
})

describe('parsePercent', () => {
  it.each([
    ['40 %', '0.4', '40 %'],
    ['6,5%', '0.065', '6.5 %'],
    ['40', '0.4', '40 %'],
    ['0.4', '0.004', '0.4 %'],
    ['33 1/4 %', '0.3325', '33.25 %'],
    ['2.9 percent', '0.029', '2.9 %'],
    ['150 %', '1.5', '150 %'],
  ])('reads %j as %s', (text, value, understood) => {
    expect(parsePercent(text)).toEqual({ ok: true, value: { value, understood } })
  })

  it.each([
    ['1/3 %', 'too-fine'],
    ['-5 %', 'negative'],
    ['', 'empty'],
    ['%', 'empty'],
    ['lots', 'not-a-number'],
    ['1.250 %', 'ambiguous-number'],
    ['9999999 %', 'too-large'],
  ])('refuses %j: %s', (text, code) => {
    expect(parsePercent(text)).toMatchObject({ ok: false, error: { code } })
  })
})

describe('formatPercent', () => {
  it('shows at most the digits asked for, with the mark asked for', () => {
    expect(formatPercent(ratio('0.3988'), { decimal: '.', digits: 1 })).toBe('39.9 %')
    expect(formatPercent(ratio('0.4'), { decimal: ',', digits: 1 })).toBe('40 %')
    expect(formatPercent(ratio('-0.065'), { decimal: ',', digits: 1 })).toBe('−6,5 %')
  })
})
