import { describe, expect, it } from 'vitest'
import { currencyCode, minorDigits } from '../../../shared-core/units/currency.ts'
import { currencySymbol } from '../../../shared-core/units/currency-symbol.ts'
import vectors from '../../fixtures/vectors/iso4217_minor_units.json' with { type: 'json' }

describe('minorDigits', () => {
  it.each(
    Object.entries(vectors.exceptions).flatMap(([digits, codes]) =>
      codes.map((code) => ({ code, digits: Number(digits) })),
    ),
  )('$code has $digits', ({ code, digits }) => {
    expect(minorDigits(currencyCode(code))).toBe(digits)
  })

  it.each(Object.entries(vectors.node_intl_differs))(
    '%s follows ISO 4217 where display tables differ (%j)',
    (code, [, iso]) => {
      expect(minorDigits(currencyCode(code))).toBe(iso)
    },
  )

  it('is two for every other currency', () => {
    for (const code of ['EUR', 'GBP', 'USD', 'SEK', 'CHF']) {
      expect(minorDigits(currencyCode(code))).toBe(vectors.default)
    }
  })
})

describe('currencyCode', () => {
  it('takes three capitals and throws for anything else', () => {
    expect(currencyCode('EUR')).toBe('EUR')
    for (const text of ['eur', 'EU', 'EURO', '€', '']) {
      expect(() => currencyCode(text)).toThrow('three capitals')
    }
  })
})

describe('currencySymbol', () => {
  it('is the sign, or the code where no sign is in common use', () => {
    expect(currencySymbol(currencyCode('EUR'))).toBe('€')
    expect(currencySymbol(currencyCode('KWD'))).toBe('KWD')
  })
})
