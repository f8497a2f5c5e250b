import type { ChartRow } from './chart.ts'
import type { Stripes } from './stripes.ts'

/**
 * The silhouette of right-angle weave, from the top, as stripes one row high.
 *
 * Its rows and positions are bands, by turns a bead's diameter and a bead's length wide, and each
 * bead fills the square where its row and its position cross, `at` to `at + 1`. The squares between
 * (the joints where beads meet, the open middles of units) count as covered where two of the four
 * beads round them are there.
 */
export function ringStripes(rows: readonly ChartRow[]): Stripes {
  return {
    perRow: 1,
    count: rows.length,
    read: (index, into) => readBand(rows, index, into),
  }
}

function readBand(rows: readonly ChartRow[], index: number, into: number[]): number {
  const [above, here, below] = [rows[index - 1], rows[index], rows[index + 1]]
  const from = Math.min(begin(above), begin(here) - 1, begin(below))
  const to = Math.max(end(above), end(here), end(below))
  let length = 0
  for (let at = from; at < to; at += 1) {
    if (!isBead(here, at) && !isJoined(above, here, below, at)) continue
    if (length > 0 && into[length - 1] === at) {
      into[length - 1] = at + 1
    } else {
      into[length] = at
      into[length + 1] = at + 1
      length += 2
    }
  }
  return length
}

type MaybeRow = ChartRow | undefined

function isJoined(above: MaybeRow, here: MaybeRow, below: MaybeRow, at: number): boolean {
  const beads =
    Number(isBead(here, at - 1)) +
    Number(isBead(here, at + 1)) +
    Number(isBead(above, at)) +
    Number(isBead(below, at))
  return beads >= 2
}

function isBead(row: MaybeRow, at: number): boolean {
  if (row === undefined) return false
  const offset = at - row.start
  return offset >= 0 && offset % 2 === 0 && (row.cells[offset / 2] ?? 0) !== 0
}

function begin(row: MaybeRow): number {
  return row === undefined || row.cells.length === 0 ? Infinity : row.start
}

function end(row: MaybeRow): number {
  return row === undefined ? -Infinity : row.start + 2 * row.cells.length
}
