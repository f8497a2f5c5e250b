import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { leanOf, loopArc } from '../../../shared-core/stitches/strand/loop-arc.ts'

describe('loopArc', () => {
  const anyLoop = fc.record({
    chordMm: fc.double({ min: 0.5, max: 6, noNaN: true }),
    over: fc.double({ min: 1.05, max: 12, noNaN: true }),
    turn: fc.double({ min: 0, max: 6.2, noNaN: true }),
  })

  it('begins and ends at its two points and is as long as asked', () => {
    fc.assert(
      fc.property(anyLoop, ({ chordMm, over, turn }) => {
        const from = { x: 3, y: -2 }
        const to = { x: 3 + chordMm * Math.cos(turn), y: -2 + chordMm * Math.sin(turn) }
        const out = { x: Math.sin(turn), y: -Math.cos(turn) }
        const lengthMm = chordMm * over
        const curve = loopArc(from, to, lengthMm, out)
        expect(curve(0).at.x).toBeCloseTo(from.x, 6)
        expect(curve(0).at.y).toBeCloseTo(from.y, 6)
        expect(curve(lengthMm).at.x).toBeCloseTo(to.x, 6)
        expect(curve(lengthMm).at.y).toBeCloseTo(to.y, 6)
        let walkedMm = 0
        const steps = 2000
        for (let step = 1; step <= steps; step += 1) {
          const [a, b] = [
            curve(((step - 1) * lengthMm) / steps).at,
            curve((step * lengthMm) / steps).at,
          ]
          walkedMm += Math.hypot(b.x - a.x, b.y - a.y)
        }
        expect(walkedMm).toBeCloseTo(lengthMm, 3)
      }),
    )
  })

  it('bulges to the side it is told', () => {
    const up = loopArc({ x: 0, y: 0 }, { x: 1.6, y: 0 }, 8, { x: 0, y: -1 })
    const down = loopArc({ x: 0, y: 0 }, { x: 1.6, y: 0 }, 8, { x: 0, y: 1 })
    expect(up(4).at.y).toBeLessThan(-1)
    expect(down(4).at.y).toBeGreaterThan(1)
  })

  it('leans as its direction does, clockwise from upwards', () => {
    expect(leanOf({ x: 0, y: -1 })).toBe(0)
    expect(leanOf({ x: 1, y: 0 })).toBeCloseTo(Math.PI / 2, 12)
    expect(leanOf({ x: -1, y: 0 })).toBeCloseTo(-Math.PI / 2, 12)
  })

  it('is a straight line when it is too short to bulge', () => {
    const curve = loopArc({ x: 0, y: 0 }, { x: 4, y: 0 }, 3, { x: 0, y: -1 })
    expect(curve(2)).toEqual({ at: { x: 2, y: 0 }, way: { x: 1, y: 0 } })
  })
})
