import type { CellRef, Chart } from '../chart.ts'
import type { ChartEdit } from './chart-edit.ts'
import { writeRuns } from './write-runs.ts'

/**
 * Sets beads of one slot, or with slot -1 takes beads away.
 *
 * Cells may lie outside the chart, which then grows (see `writeRuns`).
 */
export function paintCells(chart: Chart, cells: readonly CellRef[], slot: number): ChartEdit {
  return writeRuns(
    chart,
    cells.map(({ row, at }) => ({ row, at, count: 1, cell: slot + 1 })),
  )
}
