import type { Chart } from '../chart/chart.ts'
import { parity } from '../chart/row-phase.ts'
import type { Side } from './last-lines.ts'
import { cellStep, type LatticeRow, latticeRows } from './lattice-rows.ts'
import { lineOfCells, type PlacedCell, type WorkLine } from './work-line.ts'

/** Where work begins; what is absent is the stitch's own way. */
export type WorkStart = Readonly<{
  /** Row of the chart from the top, 0-based; the widest row in brick, else the first. */
  startRow?: number
  startSide?: Side
}>

/**
 * The lines a chart is worked in when no route says otherwise: from the start row up, then from it down.
 *
 * Rows begin by turns at the left and at the right, on a loom all at one side, in right-angle weave by
 * turns for each row of units, which is always worked from the top. Peyote begins with two half rows
 * strung together, from the side that lets the third begin beside the last bead strung.
 */
export function plainOrder(chart: Chart, start: WorkStart = {}): readonly WorkLine[] {
  const lattice = latticeRows(chart)
  const first = firstRows(chart, lattice, start.startRow)
  if (first.length === 0) return []
  const up = rowsWithBeads(lattice, (first[0] ?? 0) - 1, -1)
  const down = rowsWithBeads(lattice, (first.at(-1) ?? 0) + 1, 1)
  const groups = [first, ...[...up, ...down].map((row) => [row])]
  const beadsOf = (rows: readonly number[]): readonly PlacedCell[] =>
    rows.flatMap((row) => placedCells(chart, lattice[row]))
  const side = start.startSide ?? ownSide(chart, { first, goesDown: up.length === 0, beadsOf })
  return groups.map((rows, number) =>
    lineOfCells(chart.stitch, {
      rows,
      side: isTurned(chart, { number, row: rows[0] ?? 0 }) ? opposite(side) : side,
      beads: beadsOf(rows),
    }),
  )
}

type Lattice = readonly (LatticeRow | undefined)[]

function placedCells({ stitch }: Chart, row: LatticeRow | undefined): readonly PlacedCell[] {
  const beads: PlacedCell[] = []
  row?.cells.forEach((cell, i) => {
    if (cell !== 0) beads.push({ at: row.start + cellStep(stitch) * i, cell })
  })
  return beads
}

function firstRows(
  { stitch }: Chart,
  lattice: Lattice,
  startRow: number | undefined,
): readonly number[] {
  const topmost = lattice.findIndex((row) => row !== undefined)
  if (topmost < 0) return []
  if (stitch === 'right-angle-weave') return [topmost]
  if (stitch === 'peyote') {
    const asked = strungRows(lattice, startRow ?? -1)
    return asked.length > 0 ? asked : strungRows(lattice, topmost >> 1)
  }
  if (startRow !== undefined && lattice[startRow] !== undefined) return [startRow]
  return [stitch === 'brick' ? widestRow(lattice) : topmost]
}

/** Both half rows of a row; one alone where the other has no beads. */
function strungRows(lattice: Lattice, row: number): readonly number[] {
  return [2 * row, 2 * row + 1].filter((half) => lattice[half] !== undefined)
}

function widestRow(lattice: Lattice): number {
  let widest = -1
  let beads = 0
  lattice.forEach((row, number) => {
    const count = row?.cells.reduce((sum, cell) => sum + (cell === 0 ? 0 : 1), 0) ?? 0
    if (count <= beads) return
    widest = number
    beads = count
  })
  return widest
}

function rowsWithBeads(lattice: Lattice, from: number, step: 1 | -1): readonly number[] {
  const rows: number[] = []
  for (let row = from; row >= 0 && row < lattice.length; row += step) {
    if (lattice[row] !== undefined) rows.push(row)
  }
  return rows
}

type OwnSide = Readonly<{
  first: readonly number[]
  goesDown: boolean
  beadsOf: (rows: readonly number[]) => readonly PlacedCell[]
}>

/** Peyote is strung so that the last bead is one of the half row away from the growing edge; all else begins at the left. */
function ownSide({ stitch }: Chart, { first, goesDown, beadsOf }: OwnSide): Side {
  if (stitch !== 'peyote' || first.length < 2) return 'left'
  const rightmost = beadsOf(first).reduce((most, { at }) => Math.max(most, at), 0)
  const away = (goesDown ? first[0] : first.at(-1)) ?? 0
  return parity(rightmost / 2) === parity(away) ? 'left' : 'right'
}

function isTurned(
  { stitch }: Chart,
  { number, row }: Readonly<{ number: number; row: number }>,
): boolean {
  if (stitch === 'loom') return false
  return parity(stitch === 'right-angle-weave' ? Math.max(0, (row - 1) >> 1) : number) === 1
}

function opposite(side: Side): Side {
  return side === 'left' ? 'right' : 'left'
}
