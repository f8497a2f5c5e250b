import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { plainChannel } from '../../../shared-core/pricing/channel.ts'
import { floorPrice } from '../../../shared-core/pricing/floor-price.ts'
import { priceAt } from '../../../shared-core/pricing/price-at.ts'
import {
  type LadderChannel,
  type LadderInput,
  priceLadder,
  type Rung,
} from '../../../shared-core/pricing/price-ladder.ts'
import { durationS } from '../../../shared-core/units/duration.ts'
import { ratio } from '../../../shared-core/units/ratio.ts'
import { anyChannel, anyCost, anyRatio, EUR } from './any-channel.ts'

const whole = { kind: 'every', stepMinor: 100 } as const
const margin = (text: string) => ({ kind: 'margin', margin: ratio(text) }) as const

const channels: readonly LadderChannel[] = [
  {
    id: 'ferry-house',
    channel: plainChannel('wholesale', EUR),
    target: margin('0.1'),
    points: whole,
  },
  {
    id: 'gull-lane',
    channel: { ...plainChannel('consignment', EUR), commissionShare: ratio('0.4') },
    target: margin('0.1'),
    points: whole,
  },
  {
    id: 'saturday-market',
    channel: plainChannel('market', EUR),
    target: margin('0.3'),
    points: whole,
  },
  {
    id: 'web-shop',
    channel: {
      ...plainChannel('web', EUR),
      fee: { percent: ratio('0.065'), fixedMinor: 20, base: 'price-with-tax' },
      tax: { rate: ratio('0.2'), mode: 'included' },
    },
    target: margin('0.3'),
    points: whole,
  },
]
const saltmarsh: LadderInput = {
  cost: { currency: EUR, costMinor: 3181, labourMinor: 2550, benchSeconds: durationS(5100) },
  channels,
  direction: 'up',
  belowFloor: 'never',
  retailOverWholesale: null,
  oneRetailPrice: false,
}

function pricesOf(input: LadderInput) {
  return priceLadder(input).map(({ id, rung }) =>
    rung.ok ? [id, rung.value.priceMinor, rung.value.reason] : [id, rung.error.code],
  )
}

describe('priceLadder', () => {
  it('gives each channel the price of its own target', () => {
    // By hand: 31.81/0.9 = 35.34; 31.81/(1-0.4-0.1) = 63.62; 31.81/0.7 = 45.44;
    // 32.01/(1/1.2 x 0.7 - 0.065) = 61.75.
    expect(pricesOf(saltmarsh)).toEqual([
      ['ferry-house', 3600, 'target'],
      ['gull-lane', 6400, 'target'],
      ['saturday-market', 4600, 'target'],
      ['web-shop', 6200, 'target'],
    ])
  })

  it('holds retail to a multiple of wholesale, before tax', () => {
    expect(pricesOf({ ...saltmarsh, retailOverWholesale: ratio('2') })).toEqual([
      ['ferry-house', 3600, 'target'],
      ['gull-lane', 7200, 'retail-over-wholesale'],
      ['saturday-market', 7200, 'retail-over-wholesale'],
      ['web-shop', 8700, 'retail-over-wholesale'],
    ])
  })

  it('asks one retail price everywhere when told', () => {
    expect(pricesOf({ ...saltmarsh, oneRetailPrice: true })).toEqual([
      ['ferry-house', 3600, 'target'],
      ['gull-lane', 6400, 'target'],
      ['saturday-market', 6400, 'one-retail-price'],
      ['web-shop', 6400, 'one-retail-price'],
    ])
  })

  it('lets a channel that cannot meet its target hold up no other', () => {
    const [first, ...rest] = channels
    if (!first) throw new Error('no channel')
    const greedy = { ...first, target: margin('0.9999999999999') }
    const impossible = {
      ...greedy,
      channel: { ...first.channel, commissionShare: ratio('0.5') },
    }
    expect(pricesOf({ ...saltmarsh, channels: [impossible, ...rest] })).toEqual([
      ['ferry-house', 'no-such-price'],
      ['gull-lane', 6400, 'target'],
      ['saturday-market', 4600, 'target'],
      ['web-shop', 6200, 'target'],
    ])
  })

  it('says where a list of price points ends too low, or a retail channel has no price', () => {
    const [wholesale, consignment, market, web] = channels
    if (!wholesale || !consignment || !market || !web) throw new Error('four channels')
    const short = { ...market, points: { kind: 'list', pricesMinor: [1500, 2500] } } as const
    const closed = { ...consignment, target: margin('0.6') }
    const input = { ...saltmarsh, retailOverWholesale: ratio('2'), oneRetailPrice: true }
    expect(pricesOf({ ...input, channels: [wholesale, closed, short, web] })).toEqual([
      ['ferry-house', 3600, 'target'],
      ['gull-lane', 'no-such-price'],
      ['saturday-market', 'no-price-point'],
      ['web-shop', 8700, 'retail-over-wholesale'],
    ])
  })

  it('never asks less than a floor, and its figures are those of its price', () => {
    const anyLadder = fc.record({
      cost: anyCost,
      channels: fc
        .array(fc.tuple(anyChannel, anyRatio(100)), { minLength: 1, maxLength: 5 })
        .map((all) =>
          all.map(([channel, share], at) => ({
            id: `channel ${at}`,
            channel,
            target: { kind: 'margin' as const, margin: share },
            points: whole,
          })),
        ),
      direction: fc.constantFrom('up' as const, 'down' as const, 'nearest' as const),
      belowFloor: fc.constant('never' as const),
      retailOverWholesale: fc.option(fc.constant(ratio('2'))),
      oneRetailPrice: fc.boolean(),
    })
    fc.assert(
      fc.property(anyLadder, (input) => {
        const retail = new Set<number>()
        const rungs = priceLadder(input)
        for (const [at, { rung }] of rungs.entries()) {
          const entry = input.channels[at]
          if (!rung.ok || !entry) continue
          expect(rung.value.priceMinor).toBeGreaterThanOrEqual(rung.value.floorMinor)
          expect(floorPrice(input.cost, entry.channel)).toEqual({
            ok: true,
            value: rung.value.floorMinor,
          })
          expect(rung.value.outcome).toEqual(
            priceAt(input.cost, entry.channel, rung.value.priceMinor),
          )
          if (entry.channel.kind !== 'wholesale') retail.add(rung.value.priceMinor)
        }
        if (input.oneRetailPrice) expect(retail.size).toBeLessThanOrEqual(1)
        expectMultiple(
          input,
          rungs.flatMap(({ rung }) => (rung.ok ? [rung.value] : [])),
        )
      }),
      { numRuns: 60 },
    )
  })
})

function expectMultiple(input: LadderInput, rungs: readonly Rung[]): void {
  if (input.retailOverWholesale === null || rungs.length < input.channels.length) return
  const kinds = input.channels.map((entry) => entry.channel.kind)
  const nets = rungs.map((rung) => rung.outcome.netMinor)
  const wholesale = Math.max(0, ...nets.filter((_, at) => kinds[at] === 'wholesale'))
  for (const [at, net] of nets.entries()) {
    // The tax inside a retail price is rounded, so its net may fall half a unit short.
    if (kinds[at] !== 'wholesale') expect(net).toBeGreaterThanOrEqual(2 * wholesale - 1)
  }
}
