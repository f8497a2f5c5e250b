import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boundMore } from '../../../shared-core/stock/bound-more.ts'
import { emptyPacking, type Packing, placedOf } from '../../../shared-core/stock/packing.ts'
import { placeMost } from '../../../shared-core/stock/place-most.ts'
import { fitsByTrying, mostByTrying } from './brute-packing.ts'

function place(packing: Packing, size: number, units: number): Packing {
  const placement = placeMost(packing, size, units)
  expect(placement.units).toBe(units)
  return placement.packing
}

function expectSound(packing: Packing): void {
  packing.capacity.forEach((room, lot) => {
    const used = packing.sizes.reduce(
      (sum, size, s) => sum + size * (packing.placed[s]?.[lot] ?? 0),
      0,
    )
    expect(packing.free[lot]).toBe(room - used)
    expect(packing.free[lot]).toBeGreaterThanOrEqual(0)
  })
}

const lots = fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 0, maxLength: 4 })
const sizes = fc.array(fc.integer({ min: 1, max: 15 }), { minLength: 1, maxLength: 6 })

describe('placeMost', () => {
  it('leaves the end of each lot that is too small for a unit', () => {
    expect(placeMost(emptyPacking([29, 29, 2]), 15, 9).units).toBe(2)
    expect(placeMost(emptyPacking([20, 20, 20]), 7, 9).units).toBe(6)
  })

  it('moves earlier shares to other lots to make room', () => {
    const placed = place(place(emptyPacking([10, 9, 7]), 4, 1), 6, 2)
    const more = placeMost(placed, 4, 9)
    expect(more).toMatchObject({ units: 2, proof: 'exact' })
    expect(placedOf(more.packing, 4)).toBe(3)
    expect(placedOf(more.packing, 6)).toBe(2)
    expectSound(more.packing)
  })

  it('uses up the smallest lot that still holds a unit, the older of equal ones', () => {
    expect(placeMost(emptyPacking([50, 12, 12]), 10, 2).packing.placed).toEqual([[0, 1, 1]])
    expect(placeMost(emptyPacking([50, 12, 12]), 10, 1).packing.placed).toEqual([[0, 1, 0]])
  })

  it('counts a lot below nothing as empty', () => {
    expect(placeMost(emptyPacking([-40, 10]), 5, 9).units).toBe(2)
  })

  it('agrees with trying every arrangement, and its bound is never too low', () => {
    fc.assert(
      fc.property(lots, sizes, fc.integer({ min: 1, max: 15 }), (capacity, shares, size) => {
        let packing = emptyPacking(capacity)
        const placed: number[] = []
        for (const share of shares) {
          const step = placeMost(packing, share, 1)
          expect(step.units === 1).toBe(fitsByTrying(capacity, [...placed, share]))
          if (step.units === 1) placed.push(share)
          packing = step.packing
        }
        const most = mostByTrying(capacity, placed, size, 5)
        const found = placeMost(packing, size, 5)
        expect(found).toMatchObject({ units: most, upperBound: most, proof: 'exact' })
        expect(boundMore(packing, size)).toBeGreaterThanOrEqual(most)
        expectSound(found.packing)
        for (const share of new Set([...placed, size])) {
          const before = placed.filter((other) => other === share).length
          expect(placedOf(found.packing, share)).toBe(before + (share === size ? most : 0))
        }
      }),
      { numRuns: 1_000 },
    )
  })

  it('says so when the search is cut off, with a bound that holds', () => {
    const capacity = [97, 101, 103, 89, 107, 83]
    let packing = emptyPacking(capacity)
    for (const [size, units] of [
      [31, 5],
      [23, 6],
      [19, 5],
    ] as const)
      packing = place(packing, size, units)
    const exact = placeMost(packing, 17, 20)
    const cut = placeMost(packing, 17, 20, 1)
    expect(exact.proof).toBe('exact')
    expect(exact.units).toBeGreaterThanOrEqual(cut.units)
    expect(exact.units).toBeLessThanOrEqual(cut.upperBound)
    expect(cut).toMatchObject({ units: 9, upperBound: 11, proof: 'bounded' })
    expectSound(cut.packing)
  })
})
