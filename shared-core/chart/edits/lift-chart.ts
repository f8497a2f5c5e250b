import type { CellRef, Chart, ChartRow } from '../chart.ts'
import { latticeStep, upTo } from '../lattice-step.ts'
import { type ChartEdit, editTo, NO_SHIFT } from './chart-edit.ts'

/**
 * The edit to a chart whose rows may begin left of nothing: moves all rows to the right by the least
 * the stitch allows, so that every start is 0 or more. Cells are shared.
 */
export function liftedEdit(before: Chart, after: Chart, shift: CellRef = NO_SHIFT): ChartEdit {
  const least = after.rows.reduce((start, row) => Math.min(start, row.start), 0)
  if (least >= 0) return editTo(before, after, shift)
  const by = upTo(-least, latticeStep(after.stitch).across)
  const rows = after.rows.map(({ start, cells }): ChartRow => ({ start: start + by, cells }))
  return editTo(before, { stitch: after.stitch, rows }, { row: shift.row, at: shift.at + by })
}
