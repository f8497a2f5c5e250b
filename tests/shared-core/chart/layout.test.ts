import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { indexBeads } from '../../../shared-core/chart/bead-index.ts'
import type { Chart } from '../../../shared-core/chart/chart.ts'
import { cellAtPoint, layoutChart } from '../../../shared-core/chart/layout.ts'
import {
  beadBox,
  beadTilt,
  holeAxis,
  rowCentres,
  threadGapMm,
} from '../../../shared-core/chart/stitch-pitch.ts'
import { anyChart } from './any-chart.ts'
import { CYLINDER } from './forms.ts'
import { drawn } from './picture.ts'

const rounded = (values: Iterable<number>): number[] =>
  [...values].map((value) => Math.round(value * 1000) / 1000)

const centres = (chart: Chart, threadMm = 0) => {
  const { xMm, yMm, widthMm, heightMm } = layoutChart(chart, CYLINDER, { threadMm })
  return { x: rounded(xMm), y: rounded(yMm), size: rounded([widthMm, heightMm]) }
}

describe('layoutChart', () => {
  it('lays brick rows half a diameter out of step, a length and a thread apart', () => {
    expect(centres(drawn('brick', [' A', 'A B']), 0.1)).toEqual({
      x: [1.6, 0.8, 2.4],
      y: [0.65, 2.05, 2.05],
      size: [3.2, 2.7],
    })
  })

  it('hangs odd columns of peyote half a diameter lower', () => {
    expect(centres(drawn('peyote', ['A B A', 'A B']))).toEqual({
      x: [0.65, 1.95, 3.25, 0.65, 1.95],
      y: [0.8, 1.6, 0.8, 2.4, 3.2],
      size: [3.9, 4],
    })
  })

  it('ends peyote half a diameter higher where the last row has no odd column', () => {
    expect(centres(drawn('peyote', ['A B', 'A'])).size).toEqual([2.6, 3.2])
    expect(centres(drawn('peyote', ['  B', 'A B'])).size).toEqual([2.6, 3.2])
  })

  it('lays square stitch on a grid of length by diameter', () => {
    expect(centres(drawn('square', ['A B', 'A']))).toEqual({
      x: [0.65, 1.95, 0.65],
      y: [0.8, 0.8, 2.4],
      size: [2.6, 3.2],
    })
  })

  it('puts a warp between loom columns', () => {
    expect(centres(drawn('loom', ['A B']), 0.11)).toEqual({
      x: [0.76, 2.17],
      y: [0.8, 0.8],
      size: [2.71, 1.6],
    })
  })

  it('comes within a millimetre of 28 mm for twenty loom columns of 11/0 cylinders on an 18-groove rod', () => {
    const row = { start: 0, cells: new Uint16Array(20).fill(1) }
    const chart: Chart = { stitch: 'loom', rows: [row] }
    const { widthMm } = layoutChart(chart, CYLINDER, { threadMm: threadGapMm(0.17) })
    expect(widthMm).toBeGreaterThan(27.5)
    expect(widthMm).toBeLessThan(28.5)
  })

  it('stands ladder beads side by side', () => {
    expect(centres(drawn('ladder', ['A B C']))).toEqual({
      x: [0.8, 2.4, 4],
      y: [0.65, 0.65, 0.65],
      size: [4.8, 1.3],
    })
  })

  it('leans herringbone beads together in pairs on the pitch of their ladder', () => {
    const { pitch, widthMm } = layoutChart(drawn('herringbone', ['A B C D']), CYLINDER)
    expect(widthMm).toBeCloseTo(6.4)
    const tilts = [0, 2, 4, 6].map((at) => Math.sign(beadTilt(pitch, at)))
    expect(tilts).toEqual([1, -1, 1, -1])
  })

  it('rings four beads to a right-angle weave unit of one length and one diameter', () => {
    const chart = drawn('right-angle-weave', [' A', 'A A', ' A'])
    expect(centres(chart)).toEqual({
      x: [2.25, 0.8, 3.7, 2.25],
      y: [0.8, 2.25, 2.25, 3.7],
      size: [4.5, 4.5],
    })
    expect([0, 1].map((row) => holeAxis('right-angle-weave', row))).toEqual([
      'horizontal',
      'vertical',
    ])
  })

  it('keeps every bead inside its bounds', () => {
    fc.assert(
      fc.property(anyChart(), fc.double({ min: 0, max: 0.3, noNaN: true }), (chart, threadMm) => {
        const { pitch, xMm, yMm, bounds } = layoutChart(chart, CYLINDER, { threadMm })
        const { rowOf } = indexBeads(chart)
        xMm.forEach((x, bead) => {
          const box = beadBox(pitch, rowOf[bead] ?? 0)
          const y = yMm[bead] ?? Number.NaN
          expect(x - box.widthMm / 2).toBeGreaterThanOrEqual(bounds.left - 1e-4)
          expect(x + box.widthMm / 2).toBeLessThanOrEqual(bounds.right + 1e-4)
          expect(y - box.heightMm / 2).toBeGreaterThanOrEqual(bounds.top - 1e-4)
          expect(y + box.heightMm / 2).toBeLessThanOrEqual(bounds.bottom + 1e-4)
        })
      }),
    )
  })

  it('says the same of each row in closed form as bead by bead', () => {
    fc.assert(
      fc.property(anyChart(), fc.double({ min: 0, max: 0.3, noNaN: true }), (chart, threadMm) => {
        const { pitch, xMm, yMm } = layoutChart(chart, CYLINDER, { threadMm })
        const { rowOf, atOf } = indexBeads(chart)
        xMm.forEach((x, bead) => {
          const row = rowOf[bead] ?? 0
          const start = chart.rows[row]?.start ?? 0
          const cell = ((atOf[bead] ?? 0) - start) / 2
          const line = rowCentres(pitch, row, start)
          expect(line.xMm + cell * line.stepMm).toBeCloseTo(x, 3)
          expect(cell % 2 === 0 ? line.evenMm : line.oddMm).toBeCloseTo(yMm[bead] ?? 0, 3)
        })
      }),
    )
  })

  it('never lays two beads over each other', () => {
    fc.assert(
      fc.property(anyChart({ maxRows: 5, maxCells: 5 }), (chart) => {
        const { pitch, xMm, yMm } = layoutChart(chart, CYLINDER)
        const { rowOf } = indexBeads(chart)
        xMm.forEach((x, a) => {
          for (let b = a + 1; b < xMm.length; b += 1) {
            const [boxA, boxB] = [beadBox(pitch, rowOf[a] ?? 0), beadBox(pitch, rowOf[b] ?? 0)]
            const gapX = Math.abs(x - (xMm[b] ?? 0)) - (boxA.widthMm + boxB.widthMm) / 2
            const gapY =
              Math.abs((yMm[a] ?? 0) - (yMm[b] ?? 0)) - (boxA.heightMm + boxB.heightMm) / 2
            expect(Math.max(gapX, gapY)).toBeGreaterThan(-1e-4)
          }
        })
      }),
    )
  })

  it('has no size without beads', () => {
    const blank: Chart = { stitch: 'brick', rows: [{ start: 4, cells: new Uint16Array(3) }] }
    for (const chart of [blank, { ...blank, rows: [] }]) {
      const { xMm, widthMm, heightMm } = layoutChart(chart, CYLINDER)
      expect([xMm.length, widthMm, heightMm]).toEqual([0, 0, 0])
    }
  })
})

describe('cellAtPoint', () => {
  it('finds the cell of every bead from its centre', () => {
    fc.assert(
      fc.property(anyChart(), (chart) => {
        const { pitch, xMm, yMm } = layoutChart(chart, CYLINDER)
        const { rowOf, atOf } = indexBeads(chart)
        xMm.forEach((x, bead) => {
          const cell = { row: rowOf[bead], at: atOf[bead] }
          const phaseOf = (): number => (cell.at ?? 0) % 2
          expect(cellAtPoint(pitch, { xMm: x, yMm: yMm[bead] ?? 0 }, phaseOf)).toEqual(cell)
        })
      }),
    )
  })
})
