import type { Chart, ChartRow } from '../chart.ts'
import { type ChartEdit, editTo, noEdit } from './chart-edit.ts'

/** Deletes `count` columns from half-bead position `from` on; what lies to the right closes up. Rows to the left are shared. */
export function deleteColumns(
  chart: Chart,
  { from, count }: Readonly<{ from: number; count: number }>,
): ChartEdit {
  if (!(count > 0) || !Number.isFinite(from)) return noEdit(chart)
  const rows = chart.rows.map((row) => deleteIn(row, { from: Math.max(0, from), count }))
  return editTo(chart, { stitch: chart.stitch, rows })
}

function deleteIn(
  row: ChartRow,
  { from, count }: Readonly<{ from: number; count: number }>,
): ChartRow {
  const { start, cells } = row
  const first = Math.max(0, Math.ceil((from - start) / 2))
  if (first >= cells.length) return row
  const end = Math.min(cells.length, Math.max(first, Math.ceil((from - start) / 2) + count))
  const closed = first > 0 ? start : start + 2 * end - 2 * count
  if (first === end) return { start: start - 2 * count, cells }
  const left = new Uint16Array(cells.length - (end - first))
  left.set(cells.subarray(0, first))
  left.set(cells.subarray(end), first)
  return { start: Math.max(0, closed), cells: left }
}
