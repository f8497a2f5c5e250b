import fc from 'fast-check'
import type { Channel, Fee, FeeBase } from '../../../shared-core/pricing/channel.ts'
import type { PieceCost } from '../../../shared-core/pricing/piece-cost.ts'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { durationS } from '../../../shared-core/units/duration.ts'
import { fraction } from '../../../shared-core/units/fraction.ts'
import { type Ratio, ratioFromFraction } from '../../../shared-core/units/ratio.ts'

/** The currency of all that is drawn here. */
export const EUR = currencyCode('EUR')

/** Ratios from 0 to `most` thousandths. */
export function anyRatio(most: number): fc.Arbitrary<Ratio> {
  return fc.nat(most).map((n) => ratioFromFraction(fraction(n, 1000), 3, 'half-even'))
}

const anyFee = (mostThousandths: number): fc.Arbitrary<Fee> =>
  fc.record({
    percent: anyRatio(mostThousandths),
    fixedMinor: fc.nat(200),
    base: fc.constantFrom<FeeBase>(
      'price-before-tax',
      'price-with-tax',
      'price-and-shipping-before-tax',
      'total-paid',
    ),
  })

/** Channels that leave something of every price: fees take at most about nine tenths. */
export const anyChannel: fc.Arbitrary<Channel> = fc.record({
  kind: fc.constantFrom<Channel['kind']>('market', 'web', 'consignment', 'wholesale', 'other'),
  currency: fc.constant(EUR),
  fee: anyFee(200),
  payment: anyFee(50),
  commissionShare: anyRatio(500),
  tax: fc.record({ rate: anyRatio(300), mode: fc.constantFrom('included', 'added') }),
  shipping: fc.record({
    chargedMinor: fc.nat(900),
    costMinor: fc.nat(900),
    taxed: fc.boolean(),
  }),
})

/** Costs of a piece, its labour within them. */
export const anyCost: fc.Arbitrary<PieceCost> = fc
  .record({
    rest: fc.nat(10_000),
    labourMinor: fc.nat(10_000),
    seconds: fc.integer({ min: 1, max: 40_000 }),
  })
  .map(({ rest, labourMinor, seconds }) => ({
    currency: EUR,
    costMinor: rest + labourMinor,
    labourMinor,
    benchSeconds: durationS(seconds),
  }))
