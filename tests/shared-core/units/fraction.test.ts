import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  addFractions,
  compareFractions,
  divideFractions,
  type Fraction,
  fraction,
  fractionOfDecimal,
  fractionToNumber,
  multiplyFractions,
  subtractFractions,
  sumFractions,
} from '../../../shared-core/units/fraction.ts'

const anyFraction = fc
  .tuple(fc.bigInt(-(10n ** 12n), 10n ** 12n), fc.bigInt(1n, 10n ** 9n))
  .map(([numerator, denominator]) => fraction(numerator, denominator))

describe('fraction', () => {
  it('is kept in lowest terms with a positive denominator', () => {
    expect(fraction(10, -4)).toEqual({ numerator: -5n, denominator: 2n })
    expect(fraction(0, 7)).toEqual({ numerator: 0n, denominator: 1n })
  })

  it('has no zero denominator and no part that is not whole', () => {
    expect(() => fraction(1, 0)).toThrow('over zero')
    expect(() => fraction(1.5)).toThrow(RangeError)
    expect(() => divideFractions(fraction(1), fraction(0))).toThrow('over zero')
  })

  it('reads plain decimals exactly and nothing else', () => {
    expect(fractionOfDecimal('-12.50')).toEqual(fraction(-25, 2))
    expect(fractionOfDecimal('0.1')).toEqual(fraction(1, 10))
    for (const text of ['', '1e3', '.5', '1,5', 'NaN', '--1']) {
      expect(() => fractionOfDecimal(text)).toThrow('plain decimal')
    }
  })

  it('adds what is not exact in binary: 0.1 + 0.2 is 0.3', () => {
    const sum = addFractions(fractionOfDecimal('0.1'), fractionOfDecimal('0.2'))
    expect(sum).toEqual(fractionOfDecimal('0.3'))
    expect(0.1 + 0.2).not.toBe(0.3)
  })

  it('obeys the laws of arithmetic', () => {
    fc.assert(
      fc.property(anyFraction, anyFraction, anyFraction, (a, b, c) => {
        expect(addFractions(a, b)).toEqual(addFractions(b, a))
        expect(subtractFractions(addFractions(a, b), b)).toEqual(a)
        expect(multiplyFractions(a, addFractions(b, c))).toEqual(
          addFractions(multiplyFractions(a, b), multiplyFractions(a, c)),
        )
        expect(sumFractions([a, b, c])).toEqual(addFractions(a, addFractions(b, c)))
        if (b.numerator !== 0n) expect(divideFractions(multiplyFractions(a, b), b)).toEqual(a)
      }),
    )
  })

  it('orders as its difference does and as the nearest float does not contradict', () => {
    fc.assert(
      fc.property(anyFraction, anyFraction, (a: Fraction, b: Fraction) => {
        const order = compareFractions(a, b)
        expect(compareFractions(b, a)).toBe(order === 0 ? 0 : -order)
        expect(compareFractions(subtractFractions(a, b), fraction(0))).toBe(order)
        if (fractionToNumber(a) < fractionToNumber(b) - 1e-3) expect(order).toBe(-1)
      }),
    )
  })
})
