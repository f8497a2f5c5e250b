import type { ChartRow } from './chart.ts'

/** Cells a chart may hold, blanks within rows counted. Beyond it no single piece is stitched and screens would stall. */
export const MAX_CELLS = 4_000_000

/** Columns a chart may span. */
export const MAX_COLUMNS = 100_000

/** Rows a chart may span. */
export const MAX_ROWS = 100_000

/** Whether rows stay within the limits of a chart. */
export function isWithinLimits(rows: readonly ChartRow[]): boolean {
  let [cells, end] = [0, 0]
  for (const row of rows) {
    cells += row.cells.length
    end = Math.max(end, row.start + 2 * row.cells.length)
  }
  return cells <= MAX_CELLS && end <= 2 * MAX_COLUMNS && rows.length <= MAX_ROWS
}
