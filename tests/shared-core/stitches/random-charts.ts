import fc from 'fast-check'
import type { Chart, ChartRow, StitchKind } from '../../../shared-core/chart/chart.ts'

/** The half beads a row's beads are out of step by: brick alternates, right-angle weave's lying beads are odd. */
function phase(stitch: StitchKind, row: number): number {
  if (stitch === 'brick') return row % 2
  return stitch === 'right-angle-weave' && row % 2 === 0 ? 1 : 0
}

/** Small charts of any shape: rows with gaps, holes, lobes and loose beads. */
export function randomCharts(stitch: StitchKind, blanks = 0.15): fc.Arbitrary<Chart> {
  const cell = fc.double({ min: 0, max: 1, noNaN: true }).map((x) => (x < blanks ? 0 : 1))
  const row = fc.array(cell, { minLength: 1, maxLength: 8 })
  return fc.array(row, { minLength: 1, maxLength: 8 }).map((rows) => ({
    stitch,
    rows: rows.map((cells, at) => ({ start: phase(stitch, at), cells: Uint16Array.from(cells) })),
  }))
}

/** Charts of one run a row whose ends move by half a bead from row to row, as makers draw them. */
export function plainShapes(stitch: 'brick'): fc.Arbitrary<Chart> {
  const step = fc.constantFrom(-1, 1)
  return fc
    .record({
      width: fc.integer({ min: 2, max: 9 }),
      steps: fc.array(fc.tuple(step, step), { maxLength: 10 }),
    })
    .map(({ width, steps }) => {
      const rows: ChartRow[] = [{ start: 40, cells: new Uint16Array(width).fill(1) }]
      let [left, right] = [40, 40 + 2 * (width - 1)]
      for (const [atLeft, atRight] of steps) {
        left += atLeft
        right += atRight
        if (right - left < 2) break
        rows.push({ start: left, cells: new Uint16Array((right - left) / 2 + 1).fill(1) })
      }
      return { stitch, rows }
    })
}
