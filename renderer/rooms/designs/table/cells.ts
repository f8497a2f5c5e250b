import { rowExtent } from '../../../../shared-core/chart/bead-extent.ts'
import type { CellRef, Chart } from '../../../../shared-core/chart/chart.ts'
import type { ChartEdit } from '../../../../shared-core/chart/edits/chart-edit.ts'
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

/** How far beyond the chart the crosshair goes: rows, and half beads. */
const BEYOND = { rows: 4, halfBeads: 12 }
/** What there is to move about in where nothing is drawn yet. */
const FIRST = { rows: 14, halfBeads: 28 }

/** The nearest cell that lies in the chart or a little way outside it. */
export function nearChart({ rows }: Chart, { row, at }: CellRef): CellRef {
  let [left, right] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const { start, cells } of rows) {
    if (cells.length === 0) continue
    left = Math.min(left, start)
    right = Math.max(right, start + 2 * cells.length)
  }
  const isEmpty = left > right
  const [first, last] = isEmpty
    ? [0, FIRST.halfBeads]
    : [left - BEYOND.halfBeads, right + BEYOND.halfBeads]
  const most = isEmpty ? FIRST.rows : rows.length - 1 + BEYOND.rows
  return { row: clamp(row, -BEYOND.rows, most), at: clamp(at, first, last) }
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value))
}

/** Whether an edit leaves every cell as it was, though it may have written it. */
export function changesNothing({ chart, inverse }: ChartEdit): boolean {
  return (
    chart.stitch === inverse.stitch &&
    inverse.splices.every(
      ({ row, remove, insert }) =>
        remove === insert.length &&
        insert.every((before, at) => {
          const after = chart.rows[row + at]
          return (
            after?.start === before.start &&
            after.cells.length === before.cells.length &&
            after.cells.every((cell, i) => cell === before.cells[i])
          )
        }),
    )
  )
}
