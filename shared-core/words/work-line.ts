import type { StitchKind } from '../chart/chart.ts'
import { parity } from '../chart/row-phase.ts'
import type { LineEnds, Side } from './last-lines.ts'
import { cellStep, cutToBeads, type LatticeRow } from './lattice-rows.ts'

/**
 * One line of a word chart: a row as it is worked (in peyote a half row: 0 and 1 lie in the chart's
 * first row), or the two half rows strung together at the start of peyote.
 *
 * `from` is the first place's left edge in half beads; `cells` go from left to right, `placeStep` half
 * beads apart, whatever side the line begins at.
 */
export type WorkLine = Readonly<{
  rows: readonly number[]
  side: Side
  from: number
  cells: Uint16Array
}>

/** A bead on its way into a line: its left edge in half beads and its slot's index plus one. */
export type PlacedCell = Readonly<{ at: number; cell: number }>

/** Half beads from one place of a line to the next: every column where two half rows are strung together. */
export function placeStep(stitch: StitchKind, { rows }: Pick<WorkLine, 'rows'>): 2 | 4 {
  return rows.length > 1 ? 2 : cellStep(stitch)
}

/** A line from its beads, in any order; gaps between them are places without a bead. */
export function lineOfCells(
  stitch: StitchKind,
  {
    rows,
    side,
    beads,
  }: Pick<WorkLine, 'rows' | 'side'> & Readonly<{ beads: readonly PlacedCell[] }>,
): WorkLine {
  const step = placeStep(stitch, { rows })
  let [from, to] = [Infinity, -Infinity]
  for (const { at } of beads) {
    from = Math.min(from, at)
    to = Math.max(to, at)
  }
  const cells = new Uint16Array(beads.length === 0 ? 0 : (to - from) / step + 1)
  for (const { at, cell } of beads) cells[(at - from) / step] = cell
  return { rows, side, from, cells }
}

/** The part of a line that lies in one of its rows, cut to its beads; `undefined` when it has none there. */
export function rowOfLine(
  stitch: StitchKind,
  { rows, from, cells }: WorkLine,
  row: number,
): LatticeRow | undefined {
  if (rows.length === 1) return cutToBeads({ start: from, cells }, cellStep(stitch))
  // Strung together: every second column belongs to the other half row.
  const skip = parity(from / 2) === parity(row) ? 0 : 1
  const half = cells.filter((_, i) => i % 2 === skip)
  return cutToBeads({ start: from + 2 * skip, cells: half }, cellStep(stitch))
}

/** First and last bead of a row as it is worked. */
export function endsOfRow(stitch: StitchKind, { start, cells }: LatticeRow): LineEnds {
  return { from: start, to: start + cellStep(stitch) * (cells.length - 1) }
}
