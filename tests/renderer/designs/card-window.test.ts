import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cardsIn, rowsSeen } from '../../../renderer/rooms/designs/gallery/use-card-window.ts'

describe('cardsIn', () => {
  it('has every card that is seen, few others, and keeps the height of the whole wall', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 5_000 }),
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 200, max: 700 }),
        fc.integer({ min: -500, max: 400_000 }),
        fc.integer({ min: 1, max: 2_400 }),
        (count, columns, stepPx, topPx, heightPx) => {
          const wall = { count, columns, stepPx }
          const { from, to, abovePx, belowPx } = cardsIn(
            rowsSeen({ topPx, heightPx }, stepPx),
            wall,
          )
          const rows = Math.ceil(count / columns)
          const there = Math.ceil((to - from) / columns)
          expect(abovePx + there * stepPx + belowPx).toBe(rows * stepPx)
          expect(there).toBeLessThanOrEqual(Math.ceil(heightPx / stepPx) + 3)
          for (let row = 0; row < rows; row += 1) {
            const isSeen = (row + 1) * stepPx > topPx && row * stepPx < topPx + heightPx
            if (!isSeen) continue
            expect(from).toBeLessThanOrEqual(row * columns)
            expect(to).toBeGreaterThanOrEqual(Math.min(count, (row + 1) * columns))
          }
        },
      ),
    )
  })

  it('shows the end of a wall that a search has made shorter than the view is far down', () => {
    const wall = { count: 7, columns: 3, stepPx: 400 }
    expect(cardsIn({ first: 40, last: 44 }, wall)).toEqual({
      from: 6,
      to: 7,
      abovePx: 800,
      belowPx: 0,
    })
  })
})
