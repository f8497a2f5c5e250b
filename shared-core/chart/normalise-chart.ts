import { beadExtent, rowExtent } from './bead-extent.ts'
import type { Chart, ChartRow } from './chart.ts'
import { type ChartEdit, editTo } from './edits/chart-edit.ts'
import { latticeStep } from './lattice-step.ts'

/**
 * The plain form of a chart: no blanks at the ends of rows, no rows without beads above and below, and
 * the first bead from the left as far left as the stitch allows, so that every start is 0 or more.
 *
 * Charts with the same beads in the same places relative to each other have the same plain form
 * (peyote and herringbone keep which column they begin with, right-angle weave which row). Rows that
 * are plain already are shared.
 */
export function normaliseChart(chart: Chart): ChartEdit {
  const extent = beadExtent(chart.rows)
  if (extent === undefined) return editTo(chart, { stitch: chart.stitch, rows: [] })
  const { across, down } = latticeStep(chart.stitch)
  const left = Math.floor(extent.minAt / across) * across
  const top = Math.floor(extent.firstRow / down) * down
  const rows = chart.rows.slice(top, extent.lastRow + 1).map((row) => plainRow(row, left))
  return editTo(chart, { stitch: chart.stitch, rows }, { row: -top || 0, at: -left || 0 })
}

function plainRow(row: ChartRow, left: number): ChartRow {
  const { first, last } = rowExtent(row)
  if (last < first) return { start: 0, cells: new Uint16Array(0) }
  if (first === 0 && last === row.cells.length - 1 && left === 0) return row
  return { start: row.start + 2 * first - left, cells: row.cells.slice(first, last + 1) }
}
