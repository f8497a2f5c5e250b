import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { fraction } from '../../../shared-core/units/fraction.ts'
import { money } from '../../../shared-core/units/money.ts'
import {
  addMoney,
  compareMoney,
  multiplyMoney,
  negateMoney,
  subtractMoney,
  sumMoney,
} from '../../../shared-core/units/money-arithmetic.ts'

const EUR = currencyCode('EUR')
const JPY = currencyCode('JPY')
const anyEuros = fc.integer({ min: -1e12, max: 1e12 }).map((cents) => money(cents, EUR))

describe('money arithmetic', () => {
  it('adds, subtracts and sums whole minor units', () => {
    expect(addMoney(money(10, EUR), money(20, EUR))).toEqual(money(30, EUR))
    expect(subtractMoney(money(10, EUR), money(20, EUR))).toEqual(money(-10, EUR))
    expect(sumMoney(EUR, [])).toEqual(money(0, EUR))
    expect(sumMoney(EUR, [money(1, EUR), money(2, EUR), money(3, EUR)])).toEqual(money(6, EUR))
  })

  it('throws for two currencies', () => {
    const mixed = [money(1, EUR), money(1, JPY)] as const
    expect(() => addMoney(...mixed)).toThrow('EUR and JPY')
    expect(() => subtractMoney(...mixed)).toThrow('EUR and JPY')
    expect(() => compareMoney(...mixed)).toThrow('EUR and JPY')
    expect(() => sumMoney(JPY, [money(1, EUR)])).toThrow('JPY and EUR')
  })

  it('multiplies by an exact factor and rounds once by the named mode', () => {
    expect(multiplyMoney(money(100, EUR), fraction(1, 3), 'half-even')).toEqual(money(33, EUR))
    expect(multiplyMoney(money(5, EUR), fraction(1, 2), 'half-even')).toEqual(money(2, EUR))
    expect(multiplyMoney(money(5, EUR), fraction(1, 2), 'half-away')).toEqual(money(3, EUR))
    expect(multiplyMoney(money(1, EUR), fraction(1, 1000), 'up')).toEqual(money(1, EUR))
  })

  it('is exact where floats are not: 7 percent of 1.15 is 8.05 cents', () => {
    expect(multiplyMoney(money(115, EUR), fraction(70, 1000), 'half-away')).toEqual(money(8, EUR))
  })

  it('undoes what it does', () => {
    fc.assert(
      fc.property(anyEuros, anyEuros, (a, b) => {
        expect(subtractMoney(addMoney(a, b), b)).toEqual(a)
        expect(addMoney(a, negateMoney(a))).toEqual(money(0, EUR))
        expect(compareMoney(a, b)).toBe(-compareMoney(b, a) || 0)
      }),
    )
  })
})
