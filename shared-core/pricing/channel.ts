import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import type { CurrencyCode } from '../units/currency.ts'
import { compareFractions, fraction } from '../units/fraction.ts'
import { RATIO_ZERO, type Ratio, ratioToFraction } from '../units/ratio.ts'

/** Where a piece is sold. */
export type ChannelKind = 'market' | 'web' | 'consignment' | 'wholesale' | 'other'

/** What a percentage is taken on. */
export type FeeBase =
  | 'price-before-tax'
  | 'price-with-tax'
  | 'price-and-shipping-before-tax'
  | 'total-paid'

/** A percentage of `base` and a fixed amount on each sale. */
export type Fee = Readonly<{ percent: Ratio; fixedMinor: number; base: FeeBase }>

/**
 * Tax on a sale: `included` when the price shown contains it, `added` when it comes on top.
 *
 * Rate 0 is a sale without tax. The rates are the maker's own settings; local rules decide.
 */
export type SaleTax = Readonly<{ rate: Ratio; mode: 'included' | 'added' }>

/** Shipping on one sale: what the customer is charged (shown as the price is) and what it costs. */
export type Shipping = Readonly<{ chargedMinor: number; costMinor: number; taxed: boolean }>

/** One way to sell, with all it takes from a sale. Amounts in minor units of `currency`. */
export type Channel = Readonly<{
  kind: ChannelKind
  currency: CurrencyCode
  /** What the place or the site charges. */
  fee: Fee
  /** What taking the payment costs. */
  payment: Fee
  /** What a shop keeps of the price before tax, 0.4 for a consignment share of 40 %. */
  commissionShare: Ratio
  tax: SaleTax
  shipping: Shipping
}>

/** No fee. */
export const NO_FEE: Fee = { percent: RATIO_ZERO, fixedMinor: 0, base: 'price-before-tax' }
/** No tax. */
export const NO_TAX: SaleTax = { rate: RATIO_ZERO, mode: 'included' }
/** Nothing is sent. */
export const NO_SHIPPING: Shipping = { chargedMinor: 0, costMinor: 0, taxed: false }

/** A channel that takes nothing: the start of any other. */
export function plainChannel(kind: ChannelKind, currency: CurrencyCode): Channel {
  return {
    kind,
    currency,
    fee: NO_FEE,
    payment: NO_FEE,
    commissionShare: RATIO_ZERO,
    tax: NO_TAX,
    shipping: NO_SHIPPING,
  }
}

/**
 * The channel, when each figure is possible: percentages and shares from 0 to under 100 %, a tax
 * rate from 0 to 100 %, amounts whole and not negative.
 *
 * Refusals: `bad-percentage`, `bad-amount`, each with the field.
 */
export function checkChannel(channel: Channel): Result<Channel, Refusal> {
  const ratios: readonly (readonly [string, Ratio])[] = [
    ['fee.percent', channel.fee.percent],
    ['payment.percent', channel.payment.percent],
    ['commissionShare', channel.commissionShare],
    ['tax.rate', channel.tax.rate],
  ]
  const badRatio = ratios.find(([field, value]) => !isShare(value, field === 'tax.rate'))
  if (badRatio) return err(badPercentage(badRatio[0]))
  const amounts: readonly (readonly [string, number])[] = [
    ['fee.fixedMinor', channel.fee.fixedMinor],
    ['payment.fixedMinor', channel.payment.fixedMinor],
    ['shipping.chargedMinor', channel.shipping.chargedMinor],
    ['shipping.costMinor', channel.shipping.costMinor],
  ]
  const badAmount = amounts.find(([, value]) => !Number.isSafeInteger(value) || value < 0)
  return badAmount ? err(badAmountRefusal(badAmount[0])) : ok(channel)
}

function isShare(value: Ratio, oneAllowed: boolean): boolean {
  const exact = ratioToFraction(value)
  const againstOne = compareFractions(exact, fraction(1))
  return exact.numerator >= 0n && (oneAllowed ? againstOne <= 0 : againstOne < 0)
}

function badPercentage(field: string): Refusal {
  return {
    code: 'bad-percentage',
    message: 'A percentage of a channel is below 0 % or takes the whole price.',
    next: 'Type a percentage from 0 to under 100 %.',
    field,
  }
}

function badAmountRefusal(field: string): Refusal {
  return {
    code: 'bad-amount',
    message: 'An amount of a channel is below zero or not whole.',
    next: 'Type an amount from zero up.',
    field,
  }
}
