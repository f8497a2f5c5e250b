import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import {
  addFractions,
  compareFractions,
  divideFractions,
  type Fraction,
  fraction,
  multiplyFractions,
  subtractFractions,
  sumFractions,
} from '../units/fraction.ts'
import { formatPercent } from '../units/parse-percent.ts'
import { RATIO_ZERO, type Ratio, ratioFromFraction, ratioToFraction } from '../units/ratio.ts'
import type { Channel, Fee } from './channel.ts'

/** What must be left of a sale after tax and fees: a fixed amount and a share of the net price. */
export type Need = Readonly<{ fixedMinor: Fraction; shareOfNet: Ratio }>

/** The unrounded price, and how much of each further minor unit of price is left. */
export type ExactPrice = Readonly<{ priceMinor: Fraction; leftPerMinor: Fraction }>

/**
 * The price, as the channel shows it and before any rounding, that leaves exactly what is needed.
 *
 * With n = 1/(1+t) of the price before tax where the tax is included, else 1, and percentages p on
 * bases that hold b of each unit of price: P = (need + fixed fees + postage and fees on shipping) /
 * (n (1 - share needed) - sum p b). Never below 0.
 *
 * @returns minor units as an exact fraction. Refusal `no-such-price` when fees and the wanted share
 *   take all there is, so that no price, however high, can meet it.
 * @source P = (C + F) / (1 - f (1 + t) - m), from net price x (1 - m) = C + F + f (1 + t) x net price
 */
export function exactPrice(channel: Channel, need: Need): Result<ExactPrice, Refusal> {
  const tax = addFractions(ONE, ratioToFraction(channel.tax.rate))
  const included = channel.tax.mode === 'included'
  const perPrice = { net: included ? divideFractions(ONE, tax) : ONE, gross: included ? ONE : tax }
  const shipping = shippingAmounts(channel, tax)
  const fees = feesOf(channel)
  const taken = sumFractions(
    fees.map((fee) => multiplyFractions(ratioToFraction(fee.percent), onPrice(fee, perPrice))),
  )
  const wanted = multiplyFractions(perPrice.net, ratioToFraction(need.shareOfNet))
  const leftPerMinor = subtractFractions(subtractFractions(perPrice.net, wanted), taken)
  if (leftPerMinor.numerator <= 0n) {
    return err(noSuchPrice(divideFractions(taken, perPrice.net), need.shareOfNet))
  }
  const burden = sumFractions([
    need.fixedMinor,
    ...fees.map((fee) => fraction(fee.fixedMinor)),
    ...fees.map((fee) =>
      multiplyFractions(ratioToFraction(fee.percent), onShipping(fee, shipping)),
    ),
    subtractFractions(fraction(channel.shipping.costMinor), shipping.net),
  ])
  const priceMinor = divideFractions(burden, leftPerMinor)
  if (compareFractions(priceMinor, LARGEST_PRICE) > 0) {
    return err(noSuchPrice(divideFractions(taken, perPrice.net), need.shareOfNet))
  }
  return ok({ priceMinor: priceMinor.numerator < 0n ? fraction(0) : priceMinor, leftPerMinor })
}

const ONE = fraction(1)
// Where almost nothing is left of each coin the formula still answers, with a price nobody pays.
const LARGEST_PRICE = fraction(1_000_000_000_000)

type NetAndGross = Readonly<{ net: Fraction; gross: Fraction }>

function feesOf(channel: Channel): readonly Fee[] {
  const commission: Fee = {
    percent: channel.commissionShare,
    fixedMinor: 0,
    base: 'price-before-tax',
  }
  return [channel.fee, channel.payment, commission]
}

function onPrice(fee: Fee, perPrice: NetAndGross): Fraction {
  return fee.base === 'price-with-tax' || fee.base === 'total-paid' ? perPrice.gross : perPrice.net
}

function onShipping(fee: Fee, shipping: NetAndGross): Fraction {
  if (fee.base === 'total-paid') return shipping.gross
  return fee.base === 'price-and-shipping-before-tax' ? shipping.net : fraction(0)
}

function shippingAmounts(channel: Channel, tax: Fraction): NetAndGross {
  const charged = fraction(channel.shipping.chargedMinor)
  if (!channel.shipping.taxed) return { net: charged, gross: charged }
  return channel.tax.mode === 'included'
    ? { net: divideFractions(charged, tax), gross: charged }
    : { net: charged, gross: multiplyFractions(charged, tax) }
}

function noSuchPrice(taken: Fraction, wanted: Ratio): Refusal {
  const percent = (share: Ratio) => formatPercent(share, { decimal: '.', digits: 1 })
  const fees = percent(ratioFromFraction(taken, 6, 'half-away'))
  const target = wanted === RATIO_ZERO ? '' : ` and the wanted margin ${percent(wanted)}`
  return {
    code: 'no-such-price',
    message: `Fees take ${fees} of the price before tax${target}, so no price leaves what is wanted.`,
    next: 'Lower the wanted margin, or choose a channel that takes less.',
  }
}
