import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { plainChannel } from '../../../shared-core/pricing/channel.ts'
import { priceAt } from '../../../shared-core/pricing/price-at.ts'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { durationS } from '../../../shared-core/units/duration.ts'
import { anyChannel, anyCost, EUR } from './any-channel.ts'
import { gallery, pair, webShop } from './some-channels.ts'

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
