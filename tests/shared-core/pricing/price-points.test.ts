import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type PointDirection,
  type PricePoints,
  pointAtOrAbove,
  pointAtOrBelow,
  roundToPricePoint,
} from '../../../shared-core/pricing/price-points.ts'

const whole: PricePoints = { kind: 'every', stepMinor: 100 }
const charm: PricePoints = { kind: 'endings', endingsMinor: [0, 50, 95], everyMinor: 100 }
const list: PricePoints = { kind: 'list', pricesMinor: [1200, 4500, 1800, 2800] }
const noFloor = { floorMinor: 0, belowFloor: 'never' } as const

describe('roundToPricePoint', () => {
  it.each([
    [whole, 1978, 2000, 1900, 2000],
    [whole, 2000, 2000, 2000, 2000],
    [whole, 1950, 2000, 1900, 2000],
    [charm, 1978, 1995, 1950, 1995],
    [charm, 1996, 2000, 1995, 1995],
    [charm, 1950, 1950, 1950, 1950],
    [charm, 20, 50, 0, 0],
    [{ kind: 'endings', endingsMinor: [95], everyMinor: 100 }, 1996, 2095, 1995, 1995],
    [{ kind: 'endings', endingsMinor: [95], everyMinor: 100 }, 20, 95, 95, 95],
    [list, 2000, 2800, 1800, 1800],
    [list, 1000, 1200, 1200, 1200],
    [{ kind: 'any' }, 1978, 1978, 1978, 1978],
  ] as readonly (readonly [PricePoints, number, number, number, number])[])(
    '%j takes %i to %i up, %i down, %i nearest',
    (points, price, up, down, nearest) => {
      const to = (direction: PointDirection) =>
        roundToPricePoint(price, { points, direction, ...noFloor })
      expect([to('up'), to('down'), to('nearest')]).toEqual(
        [up, down, nearest].map((value) => ({ ok: true, value })),
      )
    },
  )

  it('is never below the floor unless told', () => {
    const rule = { points: whole, direction: 'down', floorMinor: 1950 } as const
    expect(roundToPricePoint(1978, { ...rule, belowFloor: 'never' })).toEqual({
      ok: true,
      value: 2000,
    })
    expect(roundToPricePoint(1978, { ...rule, belowFloor: 'allowed' })).toEqual({
      ok: true,
      value: 1900,
    })
  })

  it('refuses where a list ends, and points that are none', () => {
    const rule = { direction: 'up', ...noFloor } as const
    expect(roundToPricePoint(5000, { ...rule, points: list })).toMatchObject({
      error: { code: 'no-price-point' },
    })
    const bad: readonly PricePoints[] = [
      { kind: 'every', stepMinor: 0 },
      { kind: 'endings', endingsMinor: [], everyMinor: 100 },
      { kind: 'endings', endingsMinor: [100], everyMinor: 100 },
      { kind: 'list', pricesMinor: [] },
      { kind: 'list', pricesMinor: [-1] },
    ]
    for (const points of bad) {
      expect(roundToPricePoint(10, { ...rule, points })).toMatchObject({
        error: { code: 'bad-price-points' },
      })
    }
  })
})

const anyPoints: fc.Arbitrary<PricePoints> = fc.oneof(
  fc.constant<PricePoints>({ kind: 'any' }),
  fc.integer({ min: 1, max: 1000 }).map((stepMinor) => ({ kind: 'every' as const, stepMinor })),
  fc
    .uniqueArray(fc.nat(99), { minLength: 1, maxLength: 5 })
    .map((endingsMinor) => ({ kind: 'endings' as const, endingsMinor, everyMinor: 100 })),
  fc
    .array(fc.nat(20_000), { minLength: 1, maxLength: 12 })
    .map((pricesMinor) => ({ kind: 'list' as const, pricesMinor })),
)

describe('roundToPricePoint, whatever the points', () => {
  const direction = fc.constantFrom<PointDirection>('up', 'down', 'nearest')
  const price = fc.nat(20_000)

  it('gives a price point, which it then leaves alone', () => {
    fc.assert(
      fc.property(price, anyPoints, direction, (priceMinor, points, towards) => {
        const rule = { points, direction: towards, ...noFloor }
        const point = roundToPricePoint(priceMinor, rule)
        if (!point.ok) {
          expect(pointAtOrAbove(priceMinor, points)).toBeUndefined()
          return
        }
        expect(roundToPricePoint(point.value, rule)).toEqual(point)
        expect(pointAtOrAbove(point.value, points)).toBe(point.value)
        expect(pointAtOrBelow(point.value, points)).toBe(point.value)
      }),
    )
  })

  it('is monotone and keeps to the floor', () => {
    fc.assert(
      fc.property(
        price,
        fc.nat(5000),
        price,
        anyPoints,
        direction,
        (low, more, floorMinor, points, towards) => {
          const rule = { points, direction: towards, floorMinor, belowFloor: 'never' } as const
          const [lower, higher] = [
            roundToPricePoint(low, rule),
            roundToPricePoint(low + more, rule),
          ]
          if (lower.ok) expect(lower.value).toBeGreaterThanOrEqual(floorMinor)
          if (lower.ok && higher.ok) expect(higher.value).toBeGreaterThanOrEqual(lower.value)
        },
      ),
    )
  })
})
