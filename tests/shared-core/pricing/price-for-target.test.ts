import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { priceAt } from '../../../shared-core/pricing/price-at.ts'
import {
  priceForMargin,
  priceForTarget,
  priceForWage,
} from '../../../shared-core/pricing/price-for-target.ts'
import { durationS } from '../../../shared-core/units/duration.ts'
import { RATIO_ZERO, ratio } from '../../../shared-core/units/ratio.ts'
import { anyChannel, anyCost, anyRatio } from './any-channel.ts'
import { gallery, pair } from './some-channels.ts'

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
