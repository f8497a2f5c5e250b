import { assert } from '../assert.ts'
import type { CurrencyCode } from '../units/currency.ts'
import { fraction, multiplyFractions } from '../units/fraction.ts'
import { type Ratio, ratioFromFraction, ratioToFraction } from '../units/ratio.ts'
import { roundFraction } from '../units/rounding.ts'
import type { Channel, Fee, FeeBase } from './channel.ts'
import { assertPieceCost, type PieceCost } from './piece-cost.ts'
import { type TaxSplit, taxInside, taxOnTop } from './tax.ts'

/**
 * Where the money of one sale goes, in whole minor units.
 *
 * Always: `netMinor + taxMinor` is what the customer pays for the piece; with
 * `shippingNetMinor + shippingTaxMinor` it is `customerPaysMinor`; less `feesMinor` it is
 * `payoutMinor`; and `netMinor + shippingNetMinor = feesMinor + shippingCostMinor + costMinor +
 * profitMinor`.
 */
export type PriceOutcome = Readonly<{
  currency: CurrencyCode
  /** The price as the channel shows it: with tax when the tax is included. */
  priceMinor: number
  netMinor: number
  taxMinor: number
  shippingNetMinor: number
  shippingTaxMinor: number
  customerPaysMinor: number
  channelFeeMinor: number
  paymentFeeMinor: number
  commissionMinor: number
  /** The three fees together. */
  feesMinor: number
  /** What arrives: what the customer pays less the fees; the tax is still in it. */
  payoutMinor: number
  shippingCostMinor: number
  costMinor: number
  /** Below zero for a loss. */
  profitMinor: number
  /** Profit / price before tax, to six decimals half-even; null for a price of zero. */
  margin: Ratio | null
  /** Profit / cost, to six decimals half-even; null for a cost of zero. */
  markup: Ratio | null
  /** (Profit + labour) / hours at the bench, half-even; null when no time is known. */
  earningsPerBenchHourMinor: number | null
}>

/**
 * What a price in a channel leaves: tax, fees, profit, margin, mark-up, earnings per bench hour.
 *
 * Tax and each fee are rounded once to whole minor units with ties away from zero, as statements
 * show them; everything else is sums and differences of those. Fees are taken as final: tax on a
 * fee belongs into its percentage.
 *
 * @param priceMinor the price as the channel shows it, 0 or more
 * @throws Error for a negative price or two currencies: bugs.
 */
export function priceAt(cost: PieceCost, channel: Channel, priceMinor: number): PriceOutcome {
  assertPieceCost(cost, channel.currency)
  assert(Number.isSafeInteger(priceMinor) && priceMinor >= 0, `a price, got ${priceMinor}`)
  const sale = splitSale(channel, priceMinor)
  const fees = feesOf(channel, sale)
  const net = sale.goods.netMinor + sale.shipping.netMinor
  const customerPaysMinor = sale.goods.grossMinor + sale.shipping.grossMinor
  const profitMinor = net - fees.feesMinor - channel.shipping.costMinor - cost.costMinor
  return {
    currency: channel.currency,
    priceMinor,
    netMinor: sale.goods.netMinor,
    taxMinor: sale.goods.taxMinor,
    shippingNetMinor: sale.shipping.netMinor,
    shippingTaxMinor: sale.shipping.taxMinor,
    customerPaysMinor,
    ...fees,
    payoutMinor: customerPaysMinor - fees.feesMinor,
    shippingCostMinor: channel.shipping.costMinor,
    costMinor: cost.costMinor,
    profitMinor,
    margin: quotient(profitMinor, sale.goods.netMinor),
    markup: quotient(profitMinor, cost.costMinor),
    earningsPerBenchHourMinor: earningsPerBenchHour(cost, profitMinor),
  }
}

type Sale = Readonly<{ goods: TaxSplit; shipping: TaxSplit }>

function splitSale(channel: Channel, priceMinor: number): Sale {
  const { tax, shipping } = channel
  const split = tax.mode === 'included' ? taxInside : taxOnTop
  const untaxed = {
    netMinor: shipping.chargedMinor,
    taxMinor: 0,
    grossMinor: shipping.chargedMinor,
  }
  return {
    goods: split(priceMinor, tax.rate),
    shipping: shipping.taxed ? split(shipping.chargedMinor, tax.rate) : untaxed,
  }
}

function feesOf(channel: Channel, sale: Sale) {
  const channelFeeMinor = feeOn(sale, channel.fee)
  const paymentFeeMinor = feeOn(sale, channel.payment)
  const commissionMinor = percentOfAmount(sale.goods.netMinor, channel.commissionShare)
  const feesMinor = channelFeeMinor + paymentFeeMinor + commissionMinor
  return { channelFeeMinor, paymentFeeMinor, commissionMinor, feesMinor }
}

function feeOn(sale: Sale, fee: Fee): number {
  return percentOfAmount(baseAmount(sale, fee.base), fee.percent) + fee.fixedMinor
}

function baseAmount({ goods, shipping }: Sale, base: FeeBase): number {
  switch (base) {
    case 'price-before-tax':
      return goods.netMinor
    case 'price-with-tax':
      return goods.grossMinor
    case 'price-and-shipping-before-tax':
      return goods.netMinor + shipping.netMinor
    case 'total-paid':
      return goods.grossMinor + shipping.grossMinor
  }
}

function percentOfAmount(amountMinor: number, percent: Ratio): number {
  const exact = multiplyFractions(fraction(amountMinor), ratioToFraction(percent))
  return roundFraction(exact, 'half-away')
}

function quotient(part: number, whole: number): Ratio | null {
  return whole === 0 ? null : ratioFromFraction(fraction(part, whole), 6, 'half-even')
}

function earningsPerBenchHour(cost: PieceCost, profitMinor: number): number | null {
  if (cost.benchSeconds === 0) return null
  const earned = fraction(profitMinor + cost.labourMinor)
  return roundFraction(multiplyFractions(earned, fraction(3600, cost.benchSeconds)), 'half-even')
}
