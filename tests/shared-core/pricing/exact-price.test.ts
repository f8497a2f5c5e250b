import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exactPrice } from '../../../shared-core/pricing/exact-price.ts'
import { priceAt } from '../../../shared-core/pricing/price-at.ts'
import { fraction, fractionToNumber } from '../../../shared-core/units/fraction.ts'
import { RATIO_ZERO, ratio } from '../../../shared-core/units/ratio.ts'
import { anyChannel, anyCost } from './any-channel.ts'
import { gallery } from './some-channels.ts'

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
