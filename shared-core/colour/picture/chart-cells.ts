import type { BeadForm } from '../../beads/bead-form.ts'
import type { Chart } from '../../chart/chart.ts'
import { layoutChart } from '../../chart/layout.ts'
import type { CellLayout } from './picture.ts'

/**
 * Where a picture meets a chart: the place of every bead, each with its share of the lattice.
 *
 * Cells come in the order of bead numbers; `paintChart` puts colours back in that order.
 *
 * @param threadMm - The gap the thread adds (`threadGapMm`), mm.
 */
export function chartCells(chart: Chart, form: BeadForm, threadMm = 0): CellLayout {
  const { xMm, yMm, pitch } = layoutChart(chart, form, { threadMm })
  return { x: xMm, y: yMm, pitchX: 2 * pitch.halfMm, pitchY: pitch.downMm }
}

/**
 * The chart with the colours of a picture: bead `i` takes `slots[i]`, 0 for no bead.
 *
 * @throws RangeError when there is not one slot a bead: a bug in the caller.
 */
export function paintChart(chart: Chart, slots: Uint16Array): Chart {
  let bead = 0
  const rows = chart.rows.map(({ start, cells }) => ({
    start,
    cells: cells.map((cell) => {
      if (cell === 0) return 0
      bead += 1
      return slots[bead - 1] ?? 0
    }),
  }))
  if (bead !== slots.length) {
    throw new RangeError(`paintChart: expected ${bead} slots, got ${slots.length}`)
  }
  return { stitch: chart.stitch, rows }
}
