import type { Chart, ChartRow } from '../chart.ts'
import { isWithinLimits } from '../chart-limits.ts'
import { type ChartEdit, noEdit } from './chart-edit.ts'
import { liftedEdit } from './lift-chart.ts'

/** Rows `from` to `to` (both included), moved by `halfBeads` to the right, or to the left when negative. */
export type RowShift = Readonly<{ from: number; to: number; halfBeads: number }>

/**
 * Moves rows sideways, by whole beads: half a bead is dropped, because it would put the rows out of
 * step with their neighbours. A shift past the limits of a chart changes nothing. Cells are shared.
 */
export function shiftRows(chart: Chart, { from, to, halfBeads }: RowShift): ChartEdit {
  const by = 2 * Math.trunc(halfBeads / 2) || 0
  if (by === 0 || !Number.isFinite(by)) return noEdit(chart)
  const rows = chart.rows.map(
    (row, number): ChartRow =>
      number < from || number > to ? row : { start: row.start + by, cells: row.cells },
  )
  const edit = liftedEdit(chart, { stitch: chart.stitch, rows })
  return isWithinLimits(edit.chart.rows) ? edit : noEdit(chart)
}
