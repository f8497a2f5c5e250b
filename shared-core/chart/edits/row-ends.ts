import { rowExtent } from '../bead-extent.ts'
import type { Chart } from '../chart.ts'
import { type ChartEdit, noEdit } from './chart-edit.ts'
import { writeRuns } from './write-runs.ts'

/** Beads at one end of a row. */
export type RowEnd = Readonly<{ row: number; side: 'left' | 'right'; count: number }>

/** Adds beads of one slot at a row's end. A row without beads has no end and stays as it is. */
export function growRow(chart: Chart, end: RowEnd & Readonly<{ slot: number }>): ChartEdit {
  const beads = beadsOf(chart, end.row)
  if (beads === undefined || !(end.count > 0)) return noEdit(chart)
  const at = end.side === 'left' ? beads.from - 2 * end.count : beads.to
  return writeRuns(chart, [{ row: end.row, at, count: end.count, cell: end.slot + 1 }])
}

/** Takes beads away at a row's end, gaps counted as beads; at most the whole row. */
export function shrinkRow(chart: Chart, end: RowEnd): ChartEdit {
  const beads = beadsOf(chart, end.row)
  if (beads === undefined || !(end.count > 0)) return noEdit(chart)
  const count = Math.min(end.count, (beads.to - beads.from) / 2)
  const at = end.side === 'left' ? beads.from : beads.to - 2 * count
  return writeRuns(chart, [{ row: end.row, at, count, cell: 0 }])
}

function beadsOf(
  { rows }: Chart,
  number: number,
): Readonly<{ from: number; to: number }> | undefined {
  const row = rows[number]
  if (row === undefined) return undefined
  const { first, last } = rowExtent(row)
  if (last < first) return undefined
  return { from: row.start + 2 * first, to: row.start + 2 * (last + 1) }
}
