import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { plainChannel } from '../../../shared-core/pricing/channel.ts'
import { floorPrice } from '../../../shared-core/pricing/floor-price.ts'
import { priceAt } from '../../../shared-core/pricing/price-at.ts'
import { ratio } from '../../../shared-core/units/ratio.ts'
import { anyChannel, anyCost, EUR } from './any-channel.ts'
import { gallery, pair } from './some-channels.ts'

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
