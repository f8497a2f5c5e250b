import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ROW_PX, rowsIn } from '../../../renderer/ui/use-row-window.ts'

describe('rowsIn', () => {
  it('draws every row that is seen, and keeps the height of the whole table', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 100_000 }),
        fc.integer({ min: 0, max: 5_000_000 }),
        fc.integer({ min: 1, max: 2_000 }),
        (count, top, height) => {
          const { from, to, abovePx, belowPx } = rowsIn({ top, height }, count)
          expect(from).toBeGreaterThanOrEqual(0)
          expect(to).toBeLessThanOrEqual(count)
          expect(abovePx + Math.max(0, to - from) * ROW_PX + belowPx).toBe(count * ROW_PX)
          const firstSeen = Math.floor(top / ROW_PX)
          const lastSeen = Math.min(count - 1, Math.floor((top + height - 1) / ROW_PX))
          if (firstSeen <= lastSeen) {
            expect(from).toBeLessThanOrEqual(firstSeen)
            expect(to).toBeGreaterThan(lastSeen)
          }
        },
      ),
    )
  })
})
