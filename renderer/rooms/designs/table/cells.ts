import { rowExtent } from '../../../../shared-core/chart/bead-extent.ts'
import type { CellRef, Chart } from '../../../../shared-core/chart/chart.ts'
import type { Stroke } from '../../../../shared-core/chart/edits/draw-line.ts'
import { parity, rowPhases } from '../../../../shared-core/chart/row-phase.ts'

/** A cell moved by so many rows and half beads. */
export function plus(cell: CellRef, by: CellRef): CellRef {
  return { row: cell.row + by.row, at: cell.at + by.at }
}

/** A cell moved back. */
export function minus(cell: CellRef, by: CellRef): CellRef {
  return { row: cell.row - by.row, at: cell.at - by.at }
}

export function sameCell(a: CellRef | undefined, b: CellRef | undefined): boolean {
  return a?.row === b?.row && a?.at === b?.at
}

/** Whether a cell lies in a box, corners included. */
export function isInside({ from, to }: Stroke, { row, at }: CellRef): boolean {
  return (
    row >= Math.min(from.row, to.row) &&
    row <= Math.max(from.row, to.row) &&
    at >= Math.min(from.at, to.at) &&
    at <= Math.max(from.at, to.at)
  )
}

/** The nearest cell of a row to a position: where the crosshair comes to lie. */
export function snapped(chart: Chart, { row, at }: CellRef): CellRef {
  return { row, at: at - parity(at - rowPhases(chart)(row)) }
}

/** The first or last bead of a row, or the cell itself where the row has none. */
export function rowEnd(chart: Chart, { row, at }: CellRef, end: 'first' | 'last'): CellRef {
  const line = chart.rows[row]
  if (line === undefined) return { row, at }
  const { first, last } = rowExtent(line)
  if (last < first) return { row, at }
  return { row, at: line.start + 2 * (end === 'first' ? first : last) }
}
