import { rowExtent } from '../chart/bead-extent.ts'
import type { Chart, ChartRow, StitchKind } from '../chart/chart.ts'
import { isOddColumn } from '../chart/stitch-pitch.ts'

/**
 * A row as it is worked, cut to its beads: `start` is the first bead's left edge in half beads and
 * each next cell lies `cellStep` half beads further.
 */
export type LatticeRow = Readonly<{ start: number; cells: Uint16Array }>

/**
 * Half beads from one bead to the next in a row as it is worked: 2, and 4 in peyote, whose rows are
 * worked as half rows of every second column.
 */
export function cellStep(stitch: StitchKind): 2 | 4 {
  return stitch === 'peyote' ? 4 : 2
}

/** The rows of a chart as they are worked, from the top; `undefined` where one has no beads. In peyote two half rows a row. */
export function latticeRows({ stitch, rows }: Chart): readonly (LatticeRow | undefined)[] {
  if (stitch !== 'peyote') return rows.map((row) => cutToBeads(row, 2))
  return rows.flatMap((row) => [halfRow(row, false), halfRow(row, true)])
}

/** The chart made of rows as they are worked; starts may be negative. */
export function chartOfLatticeRows(
  stitch: StitchKind,
  lattice: readonly (LatticeRow | undefined)[],
): Chart {
  const none: LatticeRow = { start: 0, cells: new Uint16Array(0) }
  if (stitch !== 'peyote') return { stitch, rows: lattice.map((row) => row ?? none) }
  const rows = Array.from({ length: Math.ceil(lattice.length / 2) }, (_, row) =>
    joined(lattice[2 * row] ?? none, lattice[2 * row + 1] ?? none),
  )
  return { stitch, rows }
}

/**
 * Cuts a row to its beads, or gives `undefined` when it has none.
 *
 * @param step - Half beads from one cell to the next.
 */
export function cutToBeads({ start, cells }: LatticeRow, step: 2 | 4): LatticeRow | undefined {
  const { first, last } = rowExtent({ start, cells })
  if (last < first) return undefined
  return { start: start + step * first, cells: cells.subarray(first, last + 1) }
}

function halfRow({ start, cells }: ChartRow, isOdd: boolean): LatticeRow | undefined {
  const skip = isOddColumn(start) === isOdd ? 0 : 1
  const half = cells.filter((_, i) => i % 2 === skip)
  return cutToBeads({ start: start + 2 * skip, cells: half }, 4)
}

/** Two half rows laid into each other, column by column. */
function joined(even: LatticeRow, odd: LatticeRow): ChartRow {
  const halves = [even, odd].filter(({ cells }) => cells.length > 0)
  if (halves.length === 0) return even
  const start = Math.min(...halves.map((half) => half.start))
  const end = Math.max(...halves.map((half) => half.start + 4 * half.cells.length - 2))
  const cells = new Uint16Array((end - start) / 2)
  for (const half of halves) {
    half.cells.forEach((cell, i) => {
      cells[(half.start - start) / 2 + 2 * i] = cell
    })
  }
  return { start, cells }
}
