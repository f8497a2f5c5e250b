import type { Channel } from '../../../shared-core/pricing/channel.ts'
import { plainChannel } from '../../../shared-core/pricing/channel.ts'
import type { PieceCost } from '../../../shared-core/pricing/piece-cost.ts'
import { durationS } from '../../../shared-core/units/duration.ts'
import { ratio } from '../../../shared-core/units/ratio.ts'
import { EUR } from './any-channel.ts'

/** A pair of earrings that took 85 minutes. */
export const pair: PieceCost = {
  currency: EUR,
  costMinor: 3181,
  labourMinor: 2550,
  benchSeconds: durationS(5100),
}

/** A web shop with fees on price and shipping, and on the payment. */
export const webShop: Channel = {
  ...plainChannel('web', EUR),
  fee: { percent: ratio('0.065'), fixedMinor: 20, base: 'price-and-shipping-before-tax' },
  payment: { percent: ratio('0.029'), fixedMinor: 30, base: 'total-paid' },
  tax: { rate: ratio('0.2'), mode: 'included' },
  shipping: { chargedMinor: 480, costMinor: 350, taxed: true },
}

/** A gallery that keeps two fifths, tax added on top. */
export const gallery: Channel = {
  ...plainChannel('consignment', EUR),
  commissionShare: ratio('0.4'),
  tax: { rate: ratio('0.2'), mode: 'added' },
}
