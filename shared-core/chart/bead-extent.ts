import type { ChartRow } from './chart.ts'

/** First and last bead of a row, as indexes into its cells; `last < first` when the row has none. */
export type RowExtent = Readonly<{ first: number; last: number }>

/** Finds a row's first and last bead from its two ends inwards: constant time where the ends are beads. */
export function rowExtent({ cells }: ChartRow): RowExtent {
  let first = 0
  let last = cells.length - 1
  while (first <= last && cells[first] === 0) first += 1
  while (last >= first && cells[last] === 0) last -= 1
  return { first, last }
}

/** Where a chart's beads lie: rows, and left edges (`minAt`, `maxAt`) in half beads. */
export type BeadExtent = Readonly<{
  firstRow: number
  lastRow: number
  minAt: number
  maxAt: number
}>

/** The smallest box of rows and positions that holds every bead, or `undefined` for a chart without beads. */
export function beadExtent(rows: readonly ChartRow[]): BeadExtent | undefined {
  let firstRow = -1
  let lastRow = -1
  let minAt = Number.POSITIVE_INFINITY
  let maxAt = Number.NEGATIVE_INFINITY
  rows.forEach((row, number) => {
    const { first, last } = rowExtent(row)
    if (last < first) return
    if (firstRow < 0) firstRow = number
    lastRow = number
    minAt = Math.min(minAt, row.start + 2 * first)
    maxAt = Math.max(maxAt, row.start + 2 * last)
  })
  return firstRow < 0 ? undefined : { firstRow, lastRow, minAt, maxAt }
}
