import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { allocate } from '../../../shared-core/units/allocate.ts'
import vectors from '../../fixtures/vectors/allocation.json' with { type: 'json' }

const anyWeights = fc
  .array(fc.nat({ max: 1_000_000 }), { minLength: 1, maxLength: 30 })
  .filter((weights) => weights.some((weight) => weight > 0))
const anyTotal = fc.integer({ min: -1_000_000_000, max: 1_000_000_000 })

describe('allocate', () => {
  it.each(vectors)('$id gives the published parts', ({ inputs, expected }) => {
    expect(allocate(inputs.total, inputs.weights)).toEqual(expected.parts)
  })

  it('gives a tie to the earlier line', () => {
    expect(allocate(5, [3, 7])).toEqual([2, 3])
    expect(allocate(1, [1, 1])).toEqual([1, 0])
  })

  it('shares a negative total as its mirror image', () => {
    expect(allocate(-10_000, [1, 1, 1])).toEqual([-3334, -3333, -3333])
    expect(allocate(-1, [1, 1])).toEqual([-1, 0])
  })

  it('shares nothing as nothing, even without weights', () => {
    expect(allocate(0, [0, 0])).toEqual([0, 0])
    expect(allocate(0, [])).toEqual([])
  })

  it('throws for a total without weights and for weights that are none', () => {
    expect(() => allocate(1, [0, 0])).toThrow('no weight')
    expect(() => allocate(1, [-1, 2])).toThrow('negative')
    expect(() => allocate(1, [0.5])).toThrow('not whole')
    expect(() => allocate(1.5, [1])).toThrow('not whole')
  })

  it('has parts that sum to the total, each within one unit of its quota', () => {
    fc.assert(
      fc.property(anyTotal, anyWeights, (total, weights) => {
        const parts = allocate(total, weights)
        const sum = weights.reduce((a, b) => a + b, 0)
        expect(parts.reduce((a, b) => a + b, 0)).toBe(total)
        for (const [at, part] of parts.entries()) {
          const quota = (total * (weights[at] ?? 0)) / sum
          expect(Math.abs(part - quota)).toBeLessThan(1 + 1e-6)
          if (weights[at] === 0) expect(part).toBe(0)
        }
      }),
    )
  })

  it('depends on the proportion of the weights only', () => {
    fc.assert(
      fc.property(anyTotal, anyWeights, fc.integer({ min: 2, max: 1000 }), (total, weights, k) => {
        expect(
          allocate(
            total,
            weights.map((weight) => BigInt(weight) * BigInt(k)),
          ),
        ).toEqual(allocate(total, weights))
      }),
    )
  })

  it('never gives a heavier line less than a lighter one', () => {
    fc.assert(
      fc.property(fc.nat(1_000_000), anyWeights, (total, weights) => {
        const parts = allocate(total, weights)
        const byWeight = weights
          .map((weight, at) => ({ weight, part: parts[at] ?? 0 }))
          .toSorted((a, b) => a.weight - b.weight || a.part - b.part)
        for (const [at, line] of byWeight.entries()) {
          if (at > 0) expect(line.part).toBeGreaterThanOrEqual(byWeight[at - 1]?.part ?? 0)
        }
      }),
    )
  })
})
