import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type BookedLine, bookUse } from '../../../shared-core/stock/book-use.ts'

const anyDraws = fc
  .array(fc.integer({ min: 1, max: 50_000 }), { minLength: 1, maxLength: 5 })
  .map((quantities) => quantities.map((quantity, at) => ({ lotId: `lot_${at}`, quantity })))
const anyUse = fc.record(
  {
    good: fc.integer({ min: 0, max: 50_000 }),
    culled: fc.integer({ min: 0, max: 5_000 }),
    used: fc.integer({ min: 0, max: 60_000 }),
  },
  { requiredKeys: ['good'] },
)

const sum = (lines: readonly Pick<BookedLine, 'quantity'>[]) =>
  lines.reduce((total, line) => total + line.quantity, 0)

describe('bookUse', () => {
  const draws = [{ lotId: 'lot_a', quantity: 1_000 }]

  it('books the plan where nothing was weighed or counted', () => {
    expect(bookUse(draws, { good: 940 })).toEqual([
      { lotId: 'lot_a', quantity: 1_000, kind: 'made' },
    ])
  })

  it('books the pieces’ beads and the culls where they were counted', () => {
    expect(bookUse(draws, { good: 940, culled: 30 })).toEqual([
      { lotId: 'lot_a', quantity: 940, kind: 'made' },
      { lotId: 'lot_a', quantity: 30, kind: 'waste' },
    ])
  })

  it('follows the scale where the tube was weighed', () => {
    expect(bookUse(draws, { good: 940, culled: 30, used: 1_010 })).toEqual([
      { lotId: 'lot_a', quantity: 940, kind: 'made' },
      { lotId: 'lot_a', quantity: 30, kind: 'waste' },
      { lotId: 'lot_a', quantity: 40, kind: 'weighed' },
    ])
    expect(bookUse(draws, { good: 940, culled: 30, used: 900 })).toEqual([
      { lotId: 'lot_a', quantity: 870, kind: 'made' },
      { lotId: 'lot_a', quantity: 30, kind: 'waste' },
    ])
  })

  it('sums to what was weighed, else to what was counted, else to the plan', () => {
    fc.assert(
      fc.property(anyDraws, anyUse, (planned, use) => {
        const whole = use.used ?? (use.culled === undefined ? sum(planned) : use.good + use.culled)
        const lines = bookUse(planned, use)
        expect(sum(lines)).toBe(whole)
        expect(lines.every(({ quantity }) => Number.isInteger(quantity) && quantity > 0)).toBe(true)
        expect(sum(lines.filter(({ kind }) => kind === 'waste'))).toBe(
          Math.min(use.culled ?? 0, whole),
        )
      }),
    )
  })

  it('shares what it books between lots as they were planned', () => {
    fc.assert(
      fc.property(anyDraws, anyUse, (planned, use) => {
        const lines = bookUse(planned, use)
        const share = sum(lines) / sum(planned)
        for (const { lotId, quantity } of planned) {
          const own = sum(lines.filter((line) => line.lotId === lotId))
          // Each of three kinds may be off by less than one.
          expect(Math.abs(own - quantity * share)).toBeLessThan(3)
        }
      }),
    )
  })

  it('books nothing that was not planned to be drawn', () => {
    expect(bookUse([], { good: 10, used: 20 })).toEqual([])
  })
})
