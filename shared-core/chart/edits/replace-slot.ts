import type { Chart, ChartRow } from '../chart.ts'
import { type ChartEdit, editTo } from './chart-edit.ts'

/** Puts every bead of one slot into another, or with `to` -1 takes them away. Rows without that slot are shared. */
export function replaceSlot(
  chart: Chart,
  { from, to }: Readonly<{ from: number; to: number }>,
): ChartEdit {
  const rows = from < 0 ? chart.rows : chart.rows.map((row) => replaceIn(row, from + 1, to + 1))
  return editTo(chart, { stitch: chart.stitch, rows })
}

function replaceIn(row: ChartRow, from: number, to: number): ChartRow {
  const first = row.cells.indexOf(from)
  if (first < 0 || from === to) return row
  const cells = row.cells.slice()
  for (let i = first; i >= 0; i = cells.indexOf(from, i + 1)) cells[i] = to
  return { start: row.start, cells }
}
