import type { CellRef, Chart, StitchKind } from '../chart.ts'
import { MAX_COLUMNS } from '../chart-limits.ts'
import { parity, rowPhases } from '../row-phase.ts'
import { isOddColumn } from '../stitch-pitch.ts'
import type { ChartEdit } from './chart-edit.ts'
import { paintCells } from './paint-cells.ts'

/** A straight stroke from one cell to another. */
export type Stroke = Readonly<{ from: CellRef; to: CellRef }>

/** Draws a straight line of beads of one slot, or with slot -1 takes beads away along it. */
export function drawLine(chart: Chart, stroke: Stroke, slot: number): ChartEdit {
  return paintCells(chart, lineCells(chart, stroke), slot)
}

/**
 * The cells of a straight line, each touching the next: the line is walked in steps of at most half a
 * bead across and one row (half a row in peyote) down, and every step takes the nearest cell.
 *
 * At most 200,000 steps are taken; a longer line ends there.
 */
export function lineCells(chart: Chart, { from, to }: Stroke): readonly CellRef[] {
  const phaseOf = rowPhases(chart)
  const [begin, end] = [toPlane(chart.stitch, from), toPlane(chart.stitch, to)]
  const [across, down] = [end.u - begin.u, end.v - begin.v]
  const steps = Math.max(Math.abs(across), Math.abs(down), 1)
  const cells: CellRef[] = []
  for (let step = 0; step <= Math.min(steps, 2 * MAX_COLUMNS); step += 1) {
    const u = begin.u + (across * step) / steps
    const v = begin.v + (down * step) / steps
    const cell = nearestCell(chart.stitch, { u, v }, phaseOf)
    const last = cells.at(-1)
    if (last?.row !== cell.row || last.at !== cell.at) cells.push(cell)
  }
  return cells
}

/** A point in half beads across and rows down; in peyote in columns and half rows, where beads lie evenly. */
type PlanePoint = Readonly<{ u: number; v: number }>

function toPlane(stitch: StitchKind, { row, at }: CellRef): PlanePoint {
  if (stitch !== 'peyote') return { u: at, v: row }
  return { u: Math.floor(at / 2), v: 2 * row + (isOddColumn(at) ? 1 : 0) }
}

function nearestCell(
  stitch: StitchKind,
  { u, v }: PlanePoint,
  phaseOf: (row: number) => number,
): CellRef {
  if (stitch === 'peyote') {
    const column = Math.round(u)
    return { row: Math.round((v - parity(column)) / 2) || 0, at: 2 * column || 0 }
  }
  const row = Math.round(v) || 0
  const phase = phaseOf(row)
  return { row, at: phase + 2 * Math.round((u - phase) / 2) || 0 }
}
