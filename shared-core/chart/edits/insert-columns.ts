import type { Chart, ChartRow } from '../chart.ts'
import { isWithinLimits, MAX_CELLS, MAX_COLUMNS } from '../chart-limits.ts'
import { type ChartEdit, editTo, noEdit } from './chart-edit.ts'

/** `count` new columns before half-bead position `before`, all of one slot, or with slot -1 blank. */
export type ColumnInsertion = Readonly<{ before: number; count: number; slot: number }>

/**
 * Inserts columns: rows that cross the place get cells there, rows that lie to its right move on, rows
 * that lie to its left are shared. What would pass the limits of a chart is not inserted.
 */
export function insertColumns(chart: Chart, insertion: ColumnInsertion): ChartEdit {
  const { before, count } = insertion
  if (!(count > 0 && count <= MAX_COLUMNS) || !Number.isFinite(before)) return noEdit(chart)
  const crossed = chart.rows.filter((row) => isCrossed(row, before)).length
  if (crossed * count > MAX_CELLS) return noEdit(chart)
  const rows = chart.rows.map((row) => insertIn(row, insertion))
  return isWithinLimits(rows) ? editTo(chart, { stitch: chart.stitch, rows }) : noEdit(chart)
}

function isCrossed({ start, cells }: ChartRow, before: number): boolean {
  return before > start && before < start + 2 * cells.length
}

function insertIn(row: ChartRow, { before, count, slot }: ColumnInsertion): ChartRow {
  const { start, cells } = row
  const kept = Math.ceil((before - start) / 2)
  if (kept >= cells.length) return row
  if (kept <= 0) return { start: start + 2 * count, cells }
  const wider = new Uint16Array(cells.length + count).fill(slot + 1)
  wider.set(cells.subarray(0, kept))
  wider.set(cells.subarray(kept), kept + count)
  return { start, cells: wider }
}
