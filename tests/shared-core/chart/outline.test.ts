import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Chart } from '../../../shared-core/chart/chart.ts'
import { countBeads } from '../../../shared-core/chart/count-slots.ts'
import { layoutChart } from '../../../shared-core/chart/layout.ts'
import { type Outline, traceOutline } from '../../../shared-core/chart/outline.ts'
import { anyChart } from './any-chart.ts'
import { beadOf, CYLINDER } from './forms.ts'
import { drawn } from './picture.ts'

/** Beads of 2 mm by 2 mm make the lattice easy to read: a half bead is 1 mm. */
const SQUARE_BEAD = beadOf(2, 2)

const outlineOf = (chart: Chart, form = SQUARE_BEAD): Outline =>
  traceOutline(chart, layoutChart(chart, form).pitch)

const corners = (outline: Outline): readonly (readonly number[])[] =>
  outline.loops.map(({ points }) => [...points])

describe('traceOutline', () => {
  it('goes once round a single bead, clockwise', () => {
    const outline = outlineOf(drawn('square', ['A']))
    expect(corners(outline)).toEqual([[0, 0, 2, 0, 2, 2, 0, 2]])
    expect(outline).toMatchObject({ areaMm2: 4, loops: [{ isHole: false, areaMm2: 4 }] })
  })

  it('steps by half a bead round brick', () => {
    expect(corners(outlineOf(drawn('brick', [' A', 'B B'])))).toEqual([
      [1, 0, 3, 0, 3, 2, 4, 2, 4, 4, 0, 4, 0, 2, 1, 2],
    ])
  })

  it('notches the ends of peyote columns', () => {
    expect(corners(outlineOf(drawn('peyote', ['A B'])))).toEqual([
      [0, 0, 2, 0, 2, 1, 4, 1, 4, 3, 2, 3, 2, 2, 0, 2],
    ])
  })

  it('draws a hole the other way round', () => {
    const outline = outlineOf(drawn('square', ['A A A', 'A   A', 'A A A']))
    expect(outline.loops.map(({ isHole, areaMm2 }) => [isHole, areaMm2])).toEqual([
      [false, 36],
      [true, 4],
    ])
    expect(outline.areaMm2).toBe(32)
  })

  it('keeps beads apart that touch at a corner only', () => {
    expect(corners(outlineOf(drawn('square', ['A', '  A'])))).toEqual([
      [0, 0, 2, 0, 2, 2, 0, 2],
      [2, 2, 4, 2, 4, 4, 2, 4],
    ])
    expect(outlineOf(drawn('square', ['  A', 'A'])).loops).toHaveLength(2)
  })

  it('covers the joints and the open middle of a right-angle weave unit', () => {
    const outline = outlineOf(drawn('right-angle-weave', [' A', 'A A', ' A']))
    expect(corners(outline)).toEqual([[0, 0, 6, 0, 6, 6, 0, 6]])
  })

  it('encloses the share of every bead, no more', () => {
    fc.assert(
      fc.property(anyChart(), (chart) => {
        fc.pre(chart.stitch !== 'right-angle-weave')
        const { areaMm2 } = outlineOf(chart, CYLINDER)
        expect(areaMm2).toBeCloseTo(countBeads(chart) * 1.6 * 1.3, 6)
      }),
      { numRuns: 500 },
    )
  })

  it('is never less than the beads themselves, nor more than their bounds', () => {
    fc.assert(
      fc.property(anyChart(), fc.double({ min: 0, max: 0.3, noNaN: true }), (chart, threadMm) => {
        const { pitch, widthMm, heightMm } = layoutChart(chart, CYLINDER, { threadMm })
        const { areaMm2 } = traceOutline(chart, pitch)
        expect(areaMm2).toBeLessThanOrEqual(widthMm * heightMm + 1e-6)
        // An outermost thread gap is cut off, so a bead is covered whole but its gaps need not be.
        expect(areaMm2).toBeGreaterThanOrEqual(countBeads(chart) * 1.6 * 1.3 - 1e-6)
      }),
      { numRuns: 500 },
    )
  })

  it('turns a right angle at every corner', () => {
    fc.assert(
      fc.property(anyChart(), (chart) => {
        for (const { points } of outlineOf(chart).loops) {
          const sides = points.length / 2
          for (let side = 0; side < sides; side += 1) {
            const [isLevel, isLevelNext] = [side, side + 1].map(
              (n) => points[2 * (n % sides) + 1] === points[2 * ((n + 1) % sides) + 1],
            )
            expect(isLevel).not.toBe(isLevelNext)
          }
        }
      }),
    )
  })

  it('is empty for a chart without beads', () => {
    expect(outlineOf({ stitch: 'peyote', rows: [] })).toEqual({ loops: [], areaMm2: 0 })
  })
})
