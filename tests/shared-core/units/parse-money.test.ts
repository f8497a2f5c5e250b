import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { formatMoney, majorDecimal } from '../../../shared-core/units/format-money.ts'
import { money } from '../../../shared-core/units/money.ts'
import { parseMoney } from '../../../shared-core/units/parse-money.ts'

const EUR = currencyCode('EUR')
const JPY = currencyCode('JPY')
const KWD = currencyCode('KWD')

describe('parseMoney', () => {
  it.each([
    ['€ 4,20', 420],
    ['4.20', 420],
    ['4,2', 420],
    ['4', 400],
    ['1.250,00', 125_000],
    ['1 250,00 €', 125_000],
    ['4,20 EUR', 420],
    ['eur 4.20', 420],
    ['.50', 50],
    ['€ .50', 50],
    ['1/2', 50],
    ['0', 0],
  ])('reads %j as %i cents', (text, amountMinor) => {
    expect(parseMoney(text, { currency: EUR })).toMatchObject({
      ok: true,
      value: { value: { amountMinor, currency: 'EUR' } },
    })
  })

  it('restates with sign, mark and all minor digits', () => {
    expect(parseMoney('1.250', { currency: EUR, decimal: ',' })).toMatchObject({
      value: { understood: '€ 1250,00' },
    })
  })

  it('knows the minor unit of each currency', () => {
    expect(parseMoney('840', { currency: JPY })).toMatchObject({
      value: { value: money(840, JPY) },
    })
    expect(parseMoney('2.0085', { currency: KWD })).toMatchObject({ error: { code: 'too-fine' } })
    expect(parseMoney('2.008', { currency: KWD, decimal: '.' })).toMatchObject({
      value: { value: money(2008, KWD), understood: 'KWD 2.008' },
    })
    expect(parseMoney('8.4', { currency: JPY })).toMatchObject({ error: { code: 'too-fine' } })
  })

  it.each([
    ['$4.20', 'wrong-currency'],
    ['4.20 USD', 'wrong-currency'],
    ['4.20 apples', 'wrong-currency'],
    ['4.2051', 'too-fine'],
    ['1,250', 'ambiguous-number'],
    ['-€4', 'negative'],
    ['€', 'not-a-number'],
    ['free', 'not-a-number'],
    ['12€50', 'not-a-number'],
    ['', 'empty'],
    ['99999999999999', 'too-large'],
  ])('refuses %j: %s', (text, code) => {
    expect(parseMoney(text, { currency: EUR })).toMatchObject({ ok: false, error: { code } })
  })

  it.each(['-€4', '€ −4.00', '−4 €'])('reads %j below zero where it is allowed', (text) => {
    expect(parseMoney(text, { currency: EUR, allowNegative: true })).toMatchObject({
      value: { value: money(-400, EUR), understood: '−€ 4.00' },
    })
  })

  it('reads back every amount it writes, in every kind of currency', () => {
    const anyMoney = fc
      .tuple(fc.integer({ min: -1e11, max: 1e11 }), fc.constantFrom(EUR, JPY, KWD))
      .map(([amountMinor, currency]) => money(amountMinor, currency))
    fc.assert(
      fc.property(
        anyMoney,
        fc.constantFrom<'.' | ','>('.', ','),
        fc.constantFrom<'symbol' | 'code' | 'none'>('symbol', 'code', 'none'),
        (amount, decimal, mark) => {
          const text = formatMoney(amount, { decimal, mark })
          const options = { currency: amount.currency, decimal, allowNegative: true }
          expect(parseMoney(text, options)).toMatchObject({ ok: true, value: { value: amount } })
          expect(parseMoney(majorDecimal(amount), { ...options, decimal: '.' })).toMatchObject({
            ok: true,
            value: { value: amount },
          })
        },
      ),
    )
  })
})

describe('formatMoney', () => {
  it('shows sign, code or bare figure with the mark asked for and a real minus', () => {
    expect(formatMoney(money(420, EUR), { decimal: ',' })).toBe('€ 4,20')
    expect(formatMoney(money(420, EUR), { decimal: '.', mark: 'code' })).toBe('EUR 4.20')
    expect(formatMoney(money(-5, EUR), { decimal: '.', mark: 'none' })).toBe('−0.05')
    expect(formatMoney(money(840, JPY), { decimal: '.' })).toBe('¥ 840')
    expect(formatMoney(money(1_250_050, EUR), { decimal: ',' })).toBe('€ 12\u00a0500,50')
  })
})
