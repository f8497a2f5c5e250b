import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Channel, checkChannel, plainChannel } from '../../../shared-core/pricing/channel.ts'
import { exactPrice } from '../../../shared-core/pricing/exact-price.ts'
import { floorPrice } from '../../../shared-core/pricing/floor-price.ts'
import type { PieceCost } from '../../../shared-core/pricing/piece-cost.ts'
import { priceAt } from '../../../shared-core/pricing/price-at.ts'
import {
  priceForMargin,
  priceForTarget,
  priceForWage,
} from '../../../shared-core/pricing/price-for-target.ts'
import { taxInside, taxOnTop } from '../../../shared-core/pricing/tax.ts'
import { whatIfCurve } from '../../../shared-core/pricing/what-if.ts'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { durationS } from '../../../shared-core/units/duration.ts'
import { fraction, fractionToNumber } from '../../../shared-core/units/fraction.ts'
import { RATIO_ZERO, ratio } from '../../../shared-core/units/ratio.ts'
import { anyChannel, anyCost, anyRatio, EUR } from './any-channel.ts'

const pair: PieceCost = {
  currency: EUR,
  costMinor: 3181,
  labourMinor: 2550,
  benchSeconds: durationS(5100),
}
const webShop: Channel = {
  ...plainChannel('web', EUR),
  fee: { percent: ratio('0.065'), fixedMinor: 20, base: 'price-and-shipping-before-tax' },
  payment: { percent: ratio('0.029'), fixedMinor: 30, base: 'total-paid' },
  tax: { rate: ratio('0.2'), mode: 'included' },
  shipping: { chargedMinor: 480, costMinor: 350, taxed: true },
}
const gallery: Channel = {
  ...plainChannel('consignment', EUR),
  commissionShare: ratio('0.4'),
  tax: { rate: ratio('0.2'), mode: 'added' },
}

describe('priceAt', () => {
  it('takes a sale in the web shop apart', () => {
    // By hand: 60.00 holds 10.00 tax; shipping 4.80 holds 0.80. Fee 6.5 % of 54.00 + 0.20 = 3.71;
    // payment 2.9 % of 64.80 = 1.88 + 0.30 = 2.18. 54.00 - 5.89 - 3.50 - 31.81 = 12.80.
    expect(priceAt(pair, webShop, 6000)).toEqual({
      currency: 'EUR',
      priceMinor: 6000,
      netMinor: 5000,
      taxMinor: 1000,
      shippingNetMinor: 400,
      shippingTaxMinor: 80,
      customerPaysMinor: 6480,
      channelFeeMinor: 371,
      paymentFeeMinor: 218,
      commissionMinor: 0,
      feesMinor: 589,
      payoutMinor: 5891,
      shippingCostMinor: 350,
      costMinor: 3181,
      profitMinor: 1280,
      margin: '0.256',
      markup: '0.402389',
      earningsPerBenchHourMinor: 2704,
    })
  })

  it('takes the consignment share of the price before tax', () => {
    expect(priceAt(pair, gallery, 6000)).toMatchObject({
      netMinor: 6000,
      taxMinor: 1200,
      customerPaysMinor: 7200,
      commissionMinor: 2400,
      payoutMinor: 4800,
      profitMinor: 419,
    })
  })

  it('has no margin of a price of nothing, no mark-up on no cost, no wage without time', () => {
    const free = { ...pair, costMinor: 0, labourMinor: 0, benchSeconds: durationS(0) }
    expect(priceAt(free, plainChannel('market', EUR), 0)).toMatchObject({
      margin: null,
      markup: null,
      earningsPerBenchHourMinor: null,
    })
  })

  it('throws for a negative price and for two currencies', () => {
    expect(() => priceAt(pair, webShop, -1)).toThrow('Broken assumption')
    expect(() => priceAt(pair, plainChannel('web', currencyCode('JPY')), 1)).toThrow('JPY')
  })

  it('has parts that always sum to the whole', () => {
    fc.assert(
      fc.property(anyCost, anyChannel, fc.nat(100_000), (cost, channel, price) => {
        const at = priceAt(cost, channel, price)
        const goods = at.netMinor + at.taxMinor
        expect(goods + at.shippingNetMinor + at.shippingTaxMinor).toBe(at.customerPaysMinor)
        expect(at.channelFeeMinor + at.paymentFeeMinor + at.commissionMinor).toBe(at.feesMinor)
        expect(at.customerPaysMinor - at.feesMinor).toBe(at.payoutMinor)
        expect(at.feesMinor + at.shippingCostMinor + at.costMinor + at.profitMinor).toBe(
          at.netMinor + at.shippingNetMinor,
        )
        expect(channel.tax.mode === 'included' ? goods : at.netMinor).toBe(price)
        expect(Object.values(at).every((part) => part !== undefined && !Number.isNaN(part))).toBe(
          true,
        )
      }),
    )
  })
})

describe('taxInside and taxOnTop', () => {
  it('undo each other: the tax on a net price is the tax inside its gross', () => {
    fc.assert(
      fc.property(fc.nat(10_000_000), anyRatio(1000), (netMinor, rate) => {
        const onTop = taxOnTop(netMinor, rate)
        expect(taxInside(onTop.grossMinor, rate)).toEqual(onTop)
      }),
    )
  })
})

describe('priceForMargin, priceForWage and priceForTarget', () => {
  it('meet the wanted margin to within what whole minor units can show', () => {
    fc.assert(
      fc.property(anyCost, anyChannel, anyRatio(50), (cost, channel, margin) => {
        const price = priceForMargin(cost, channel, margin)
        if (!price.ok) {
          expect(price.error.code).toBe('no-such-price')
          return
        }
        const at = priceAt(cost, channel, price.value)
        const wanted = Number(margin) * at.netMinor
        expect(at.profitMinor).toBeGreaterThanOrEqual(wanted - 3)
        // One minor unit of price less would leave less than is wanted, or there is none to take.
        if (price.value > 0) {
          const below = priceAt(cost, channel, price.value - 1)
          expect(below.profitMinor).toBeLessThan(Number(margin) * below.netMinor + 3)
        }
      }),
    )
  })

  it('meet the wanted wage: labour and profit together, by the hour', () => {
    const price = priceForWage(pair, gallery, 2400)
    expect(price).toEqual({ ok: true, value: 6719 })
    expect(priceAt(pair, gallery, 6719).earningsPerBenchHourMinor).toBeGreaterThanOrEqual(2400)
    expect(priceAt(pair, gallery, 6716).earningsPerBenchHourMinor).toBeLessThan(2400)
  })

  it('ask the price of the plain cost for a wage equal to the labour in it', () => {
    expect(priceForWage(pair, gallery, 1800)).toEqual(priceForMargin(pair, gallery, RATIO_ZERO))
  })

  it('rise with the cost, the margin and the wage', () => {
    fc.assert(
      fc.property(
        anyCost,
        anyChannel,
        anyRatio(20),
        fc.nat(3000),
        (cost, channel, margin, more) => {
          const dearer = { ...cost, costMinor: cost.costMinor + more }
          const pairs = [
            [priceForMargin(cost, channel, margin), priceForMargin(dearer, channel, margin)],
            [priceForMargin(cost, channel, RATIO_ZERO), priceForMargin(cost, channel, margin)],
            [priceForWage(cost, channel, 1000), priceForWage(cost, channel, 1000 + more)],
          ] as const
          for (const [lower, higher] of pairs) {
            if (lower.ok && higher.ok) expect(higher.value).toBeGreaterThanOrEqual(lower.value)
            if (!lower.ok) expect(higher.ok).toBe(false)
          }
        },
      ),
    )
  })

  it.each([
    ['a margin of 100 %', { kind: 'margin', margin: ratio('1') }, 'bad-target'],
    ['a negative margin', { kind: 'margin', margin: ratio('-0.1') }, 'bad-target'],
    ['a negative mark-up', { kind: 'markup', markup: ratio('-0.1') }, 'bad-target'],
    ['half a cent an hour', { kind: 'wage', minorPerHour: 0.5 }, 'bad-target'],
    ['more than fees leave', { kind: 'margin', margin: ratio('0.6') }, 'no-such-price'],
  ] as const)('refuse %s', (_, target, code) => {
    expect(priceForTarget(pair, gallery, target)).toMatchObject({ error: { code } })
  })

  it('refuse a wage without bench time', () => {
    const untimed = { ...pair, benchSeconds: durationS(0) }
    expect(priceForWage(untimed, gallery, 2000)).toMatchObject({ error: { code: 'no-bench-time' } })
  })

  it('ask nothing where shipping earns more than the piece costs', () => {
    const posted = { ...gallery, shipping: { chargedMinor: 900, costMinor: 0, taxed: false } }
    const cheap = { ...pair, costMinor: 100, labourMinor: 0 }
    expect(priceForMargin(cheap, posted, RATIO_ZERO)).toEqual({ ok: true, value: 0 })
  })
})

describe('exactPrice', () => {
  it('solves the equation it states: what is left at that price is what is needed', () => {
    fc.assert(
      fc.property(anyCost, anyChannel, (cost, channel) => {
        const need = { fixedMinor: fraction(cost.costMinor), shareOfNet: RATIO_ZERO }
        const exact = exactPrice(channel, need)
        if (!exact.ok || exact.value.priceMinor.numerator === 0n) return
        const price = fractionToNumber(exact.value.priceMinor)
        // The rounded breakdown either side of the exact price brackets a profit of nothing.
        const slack = 3 + fractionToNumber(exact.value.leftPerMinor)
        expect(Math.abs(priceAt(cost, channel, Math.round(price)).profitMinor)).toBeLessThanOrEqual(
          slack,
        )
      }),
    )
  })

  it('refuses a channel that takes all there is', () => {
    const greedy = {
      ...gallery,
      commissionShare: ratio('0.95'),
      payment: { percent: ratio('0.05'), fixedMinor: 0, base: 'price-before-tax' },
    } as const
    const found = exactPrice(greedy, { fixedMinor: fraction(1), shareOfNet: RATIO_ZERO })
    expect(found).toMatchObject({
      error: {
        code: 'no-such-price',
        message: 'Fees take 100 % of the price before tax, so no price leaves what is wanted.',
      },
    })
  })
})

describe('floorPrice', () => {
  it('refuses a price nobody could pay', () => {
    const greedy = { ...gallery, commissionShare: ratio('0.999999999999') }
    expect(floorPrice(pair, greedy)).toMatchObject({ error: { code: 'no-such-price' } })
  })

  it('is the lowest price from which up nothing is lost, fees and tax rounded as on a statement', () => {
    fc.assert(
      fc.property(anyCost, anyChannel, (cost, channel) => {
        const floor = floorPrice(cost, channel)
        if (!floor.ok) {
          expect(floor.error.code).toBe('no-such-price')
          return
        }
        for (let more = 0; more < 60; more += 1) {
          expect(priceAt(cost, channel, floor.value + more).profitMinor).toBeGreaterThanOrEqual(0)
        }
        if (floor.value > 0) {
          expect(priceAt(cost, channel, floor.value - 1).profitMinor).toBeLessThan(0)
        }
      }),
    )
  })

  it('is the cost itself where a channel takes nothing', () => {
    expect(floorPrice(pair, plainChannel('market', EUR))).toEqual({ ok: true, value: 3181 })
  })

  it('stays safe and quick where fees leave almost nothing', () => {
    const greedy = { ...gallery, commissionShare: ratio('0.9999') }
    const floor = floorPrice({ ...pair, costMinor: 100, labourMinor: 0 }, greedy)
    if (!floor.ok) throw new Error(floor.error.message)
    expect(
      priceAt({ ...pair, costMinor: 100, labourMinor: 0 }, greedy, floor.value).profitMinor,
    ).toBeGreaterThanOrEqual(0)
    expect(floor.value).toBeLessThan(1_040_000)
  })
})

describe('whatIfCurve', () => {
  it('runs evenly over both ends, rising in profit as a whole', () => {
    const curve = whatIfCurve(pair, webShop, { fromMinor: 3000, toMinor: 9000, points: 13 })
    if (!curve.ok) throw new Error(curve.error.message)
    expect(curve.value.map((point) => point.priceMinor)).toEqual([
      3000, 3500, 4000, 4500, 5000, 5500, 6000, 6500, 7000, 7500, 8000, 8500, 9000,
    ])
    const profits = curve.value.map((point) => point.profitMinor)
    expect(profits).toEqual(profits.toSorted((a, b) => a - b))
    expect(curve.value[6]).toEqual(priceAt(pair, webShop, 6000))
  })

  it('gives a price once where points fall together', () => {
    const curve = whatIfCurve(pair, webShop, { fromMinor: 0, toMinor: 2, points: 500 })
    expect(curve.ok && curve.value.map((point) => point.priceMinor)).toEqual([0, 1, 2])
  })

  it.each([
    { fromMinor: 5, toMinor: 5, points: 2 },
    { fromMinor: -1, toMinor: 5, points: 2 },
    { fromMinor: 0, toMinor: 5, points: 1 },
    { fromMinor: 0, toMinor: 5, points: 501 },
    { fromMinor: 0, toMinor: 5.5, points: 2 },
  ])('refuses %j', (range) => {
    expect(whatIfCurve(pair, webShop, range)).toMatchObject({ error: { code: 'bad-range' } })
  })
})

describe('checkChannel', () => {
  it('passes what a channel can be', () => {
    fc.assert(
      fc.property(anyChannel, (channel) => {
        expect(checkChannel(channel)).toEqual({ ok: true, value: channel })
      }),
    )
  })

  it.each([
    [{ ...gallery, commissionShare: ratio('1') }, 'bad-percentage', 'commissionShare'],
    [
      { ...gallery, fee: { ...gallery.fee, percent: ratio('-0.01') } },
      'bad-percentage',
      'fee.percent',
    ],
    [{ ...gallery, tax: { rate: ratio('1.01'), mode: 'added' } }, 'bad-percentage', 'tax.rate'],
    [
      { ...gallery, payment: { ...gallery.payment, fixedMinor: -1 } },
      'bad-amount',
      'payment.fixedMinor',
    ],
    [
      { ...gallery, shipping: { ...gallery.shipping, costMinor: 0.5 } },
      'bad-amount',
      'shipping.costMinor',
    ],
  ] as const)('refuses channel %#', (channel, code, field) => {
    expect(checkChannel(channel)).toMatchObject({ error: { code, field } })
  })
})
