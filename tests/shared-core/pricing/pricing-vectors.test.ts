import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { breakEven } from '../../../shared-core/pricing/break-even.ts'
import { type Channel, plainChannel } from '../../../shared-core/pricing/channel.ts'
import { marginOfMarkup, markupOfMargin } from '../../../shared-core/pricing/margin-and-markup.ts'
import type { PieceCost } from '../../../shared-core/pricing/piece-cost.ts'
import {
  exactPriceForTarget,
  type PriceTarget,
  priceForTarget,
} from '../../../shared-core/pricing/price-for-target.ts'
import { taxInside } from '../../../shared-core/pricing/tax.ts'
import { currencyCode, minorDigits } from '../../../shared-core/units/currency.ts'
import { durationS } from '../../../shared-core/units/duration.ts'
import {
  divideFractions,
  fraction,
  fractionOfDecimal,
  fractionToNumber,
  multiplyFractions,
} from '../../../shared-core/units/fraction.ts'
import { ratio } from '../../../shared-core/units/ratio.ts'
import { roundFraction } from '../../../shared-core/units/rounding.ts'
import vatVectors from '../../fixtures/vectors/vat.json' with { type: 'json' }

type Vector = Readonly<{
  id: string
  inputs: Readonly<Record<string, string>>
  expected: Readonly<Record<string, string | number>>
  tolerance: number
}>

const vectors = JSON.parse(
  readFileSync(new URL('../../fixtures/vectors/pricing.json', import.meta.url), 'utf8'),
) as readonly Vector[]

const CURRENCIES: Readonly<Record<string, string>> = { jpy: 'JPY', kwd: 'KWD' }

function minor(major: string | number | undefined, digits: number): number {
  const scale = fraction(10n ** BigInt(digits))
  const exact = multiplyFractions(fractionOfDecimal(String(major ?? 0)), scale)
  expect(exact.denominator).toBe(1n)
  return Number(exact.numerator)
}

function question({ id, inputs }: Vector) {
  const currency = currencyCode(CURRENCIES[id] ?? 'EUR')
  const digits = minorDigits(currency)
  const channel: Channel = {
    ...plainChannel('web', currency),
    fee: {
      percent: ratio(inputs['fee_pct'] ?? '0'),
      fixedMinor: minor(inputs['fee_fixed'], digits),
      base: inputs['fee_on'] === 'net' ? 'price-before-tax' : 'price-with-tax',
    },
    tax: { rate: ratio(inputs['tax'] ?? '0'), mode: 'included' },
  }
  const cost: PieceCost = {
    currency,
    costMinor: minor(inputs['cost'], digits),
    labourMinor: 0,
    benchSeconds: durationS(0),
  }
  const wanted = ratio(inputs['target'] ?? '0')
  const target: PriceTarget =
    inputs['basis'] === 'markup_on_cost'
      ? { kind: 'markup', markup: wanted }
      : { kind: 'margin', margin: wanted }
  return { cost, channel, target, digits }
}

const priced = vectors.filter((one) => one.inputs['cost'] !== undefined && !one.expected['error'])

describe('priceForTarget', () => {
  it('has vectors to be tried on', () => expect(priced).toHaveLength(8))

  it.each(priced)('$id: the exact price, and the whole minor unit above it', (vector) => {
    const { cost, channel, target, digits } = question(vector)
    const exact = exactPriceForTarget(cost, channel, target)
    if (!exact.ok) throw new Error(exact.error.message)
    const gross = divideFractions(exact.value.priceMinor, fraction(10 ** digits))
    const off = fractionToNumber(gross) - Number(vector.expected['gross_price'])
    expect(Math.abs(off)).toBeLessThan(vector.tolerance)
    expect(roundFraction(exact.value.priceMinor, 'half-away')).toBe(
      minor(vector.expected['gross_half_up'], digits),
    )
    expect(priceForTarget(cost, channel, target)).toEqual({
      ok: true,
      value: minor(vector.expected['gross_round_up_to_minor'], digits),
    })
  })

  it.each(vectors.filter((one) => one.expected['error']))(
    '$id: no price meets the target',
    (vector) => {
      const { cost, channel, target } = question(vector)
      expect(priceForTarget(cost, channel, target)).toEqual({
        ok: false,
        error: {
          code: 'no-such-price',
          message:
            'Fees take 6 % of the price before tax and the wanted margin 95 %, so no price leaves what is wanted.',
          next: 'Lower the wanted margin, or choose a channel that takes less.',
        },
      })
    },
  )
})

describe('markupOfMargin and marginOfMarkup', () => {
  // A third is no exact decimal; its vector is met by the nearest ratio below.
  const asDecimal = (text = '') => ratio(text === '1/3' ? '0.33333333333333333333' : text)

  it.each(vectors.filter((one) => one.inputs['margin'] !== undefined))('$id', (vector) => {
    const margin = asDecimal(vector.inputs['margin'])
    const markup = markupOfMargin(margin)
    if (!markup.ok) throw new Error(markup.error.message)
    expect(Math.abs(Number(markup.value) - Number(vector.expected['markup']))).toBeLessThan(
      vector.tolerance,
    )
    const back = marginOfMarkup(markup.value)
    expect(back.ok && Math.abs(Number(back.value) - Number(margin))).toBeLessThan(1e-7)
  })

  it('refuse what has no answer', () => {
    expect(markupOfMargin(ratio('1'))).toMatchObject({ error: { code: 'bad-target' } })
    expect(marginOfMarkup(ratio('-1'))).toMatchObject({ error: { code: 'bad-target' } })
  })
})

describe('breakEven', () => {
  it.each(vectors.filter((one) => one.inputs['fixed'] !== undefined))('$id', (vector) => {
    const left = minor(vector.inputs['price'], 2) - minor(vector.inputs['variable'], 2)
    const found = breakEven(minor(vector.inputs['fixed'], 2), left)
    if (!found.ok) throw new Error(found.error.message)
    const off = fractionToNumber(found.value.exact) - Number(vector.expected['units_exact'])
    expect(Math.abs(off)).toBeLessThan(vector.tolerance)
    expect(found.value.count).toBe(vector.expected['units_whole'])
  })

  it('refuses a sale that leaves nothing, unless there is nothing to pay', () => {
    expect(breakEven(1, 0)).toMatchObject({ error: { code: 'never-breaks-even' } })
    expect(breakEven(1, -5)).toMatchObject({ error: { code: 'never-breaks-even' } })
    expect(breakEven(0, -5)).toMatchObject({ ok: true, value: { count: 0 } })
    expect(breakEven(-1, 5)).toMatchObject({ error: { code: 'bad-amount' } })
  })
})

describe('taxInside', () => {
  it.each(vatVectors)('$id is as printed', ({ inputs, expected }) => {
    const grossMinor = minor(inputs.gross, 2)
    expect(taxInside(grossMinor, ratio(inputs.rate))).toEqual({
      grossMinor,
      taxMinor: minor(expected.tax, 2),
      netMinor: minor(expected.net, 2),
    })
  })
})
