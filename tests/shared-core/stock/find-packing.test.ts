import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { findPacking } from '../../../shared-core/stock/find-packing.ts'
import { fitsByTrying } from './brute-packing.ts'

const question = fc.integer({ min: 1, max: 3 }).chain((kinds) =>
  fc.record({
    capacity: fc.array(fc.integer({ min: 0, max: 40 }), { maxLength: 4 }),
    sizes: fc.uniqueArray(fc.integer({ min: 1, max: 20 }), {
      minLength: kinds,
      maxLength: kinds,
    }),
    counts: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: kinds, maxLength: kinds }),
  }),
)

describe('findPacking', () => {
  it('finds a packing exactly when trying every arrangement does', () => {
    fc.assert(
      fc.property(question, ({ capacity, sizes, counts }) => {
        const shares = sizes.flatMap((size, s) => Array<number>(counts[s] ?? 0).fill(size))
        const answer = findPacking({ capacity, sizes, counts }, 1_000_000)
        expect(answer.kind).toBe(fitsByTrying(capacity, shares) ? 'found' : 'none')
        if (answer.kind !== 'found') return
        const totals = answer.placed.map((row) => row.reduce((a, b) => a + b, 0))
        expect(totals).toEqual(counts)
        capacity.forEach((room, lot) => {
          const used = sizes.reduce(
            (sum, size, s) => sum + size * (answer.placed[s]?.[lot] ?? 0),
            0,
          )
          expect(used).toBeLessThanOrEqual(room)
        })
      }),
      { numRuns: 2_000 },
    )
  })

  it('proves that six shares over half a lot do not fit into five lots', () => {
    const answer = findPacking({ capacity: [10, 10, 10, 10, 10], sizes: [6], counts: [6] }, 10_000)
    expect(answer.kind).toBe('none')
  })

  it('stops at its budget', () => {
    const capacity = Array.from({ length: 12 }, (_, i) => 997 + i)
    const answer = findPacking(
      { capacity, sizes: [331, 251, 173, 127], counts: [9, 12, 15, 20] },
      10,
    )
    expect(answer).toMatchObject({ kind: 'cut off', nodes: 11 })
  })
})
