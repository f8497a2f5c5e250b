import type { Chart, ChartRow } from '../chart.ts'
import { isWithinLimits, MAX_CELLS, MAX_ROWS } from '../chart-limits.ts'
import { latticeStep, upTo } from '../lattice-step.ts'
import { parity, stitchPhase } from '../row-phase.ts'
import { type ChartEdit, noEdit } from './chart-edit.ts'
import { liftedEdit } from './lift-chart.ts'

/** `count` new rows before row `before` (at the chart's length: after the last), all of one slot, or with slot -1 blank. */
export type RowInsertion = Readonly<{ before: number; count: number; slot: number }>

/**
 * Inserts rows as wide as the row above them (at the top: as the first row).
 *
 * New brick rows lie half a bead out of step by turns, and after an odd number of them the rows below
 * move half a bead, so that all stay in step. In right-angle weave rows come in twos. What would pass
 * the limits of a chart is not inserted.
 */
export function insertRows(chart: Chart, { before, count, slot }: RowInsertion): ChartEdit {
  const { stitch, rows } = chart
  const at = Math.min(Math.max(0, before), rows.length)
  const added = upTo(Math.min(count, MAX_ROWS), latticeStep(stitch).down)
  if (!(added > 0)) return noEdit(chart)
  const model = rows[Math.max(0, at - 1)] ?? { start: 0, cells: new Uint16Array(0) }
  const widest = Math.max(model.cells.length, rows[at - 2]?.cells.length ?? 0)
  if (added * widest > MAX_CELLS) return noEdit(chart)
  const below = rows.slice(at)
  const slant = stitch === 'brick' ? slantAfter(model, below[0]) : 0
  const fresh = Array.from({ length: added }, (_, i) =>
    freshRow(modelFor(stitch, { rows, at, i, model }), {
      slot,
      by: slant * parity(at === 0 ? added - i : i + 1),
    }),
  )
  const isOutOfStep = stitch === 'brick' && at > 0 && parity(added) === 1
  const moved = isOutOfStep ? below.map((row) => moveRow(row, -slant)) : below
  const edited = { stitch, rows: [...rows.slice(0, at), ...fresh, ...moved] }
  const edit = liftedEdit(chart, edited, at === 0 ? { row: added, at: 0 } : undefined)
  return isWithinLimits(edit.chart.rows) ? edit : noEdit(chart)
}

/** The new row leans the way the next one did, so that a straight edge stays straight. */
function slantAfter(above: ChartRow, below: ChartRow | undefined): -1 | 1 {
  return below !== undefined && below.cells.length > 0 && below.start < above.start ? -1 : 1
}

type ModelChoice = Readonly<{
  rows: readonly ChartRow[]
  at: number
  i: number
  model: ChartRow
}>

/** Rows of lying and of standing beads are each as wide as the last of their kind. */
function modelFor(stitch: Chart['stitch'], { rows, at, i, model }: ModelChoice): ChartRow {
  if (stitch !== 'right-angle-weave') return model
  const row = at + i
  const alike = rows[at - 1 - parity(row - at + 1)] ?? rows[parity(row)] ?? model
  const isOutOfStep = parity(alike.start) !== stitchPhase(stitch, row, 0)
  return isOutOfStep ? moveRow(alike, parity(alike.start) === 1 ? -1 : 1) : alike
}

function freshRow(
  { start, cells }: ChartRow,
  { slot, by }: Readonly<{ slot: number; by: number }>,
): ChartRow {
  return { start: start + by, cells: new Uint16Array(cells.length).fill(slot + 1) }
}

function moveRow({ start, cells }: ChartRow, by: number): ChartRow {
  return { start: start + by, cells }
}
