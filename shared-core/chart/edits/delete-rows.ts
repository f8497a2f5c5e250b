import type { Chart, ChartRow } from '../chart.ts'
import { latticeStep, upTo } from '../lattice-step.ts'
import { parity } from '../row-phase.ts'
import { type ChartEdit, noEdit } from './chart-edit.ts'
import { liftedEdit } from './lift-chart.ts'

/**
 * Deletes `count` rows from row `from` on.
 *
 * In brick, after an odd number, the rows below move half a bead towards the row they now follow, so
 * that all stay in step. In right-angle weave rows go in twos.
 */
export function deleteRows(
  chart: Chart,
  { from, count }: Readonly<{ from: number; count: number }>,
): ChartEdit {
  const { stitch, rows } = chart
  const first = Math.max(0, from)
  const end = Math.min(first + upTo(count, latticeStep(stitch).down), rows.length)
  if (!(end > first)) return noEdit(chart)
  const [above, below] = [rows.slice(0, first), rows.slice(end)]
  const isOutOfStep = stitch === 'brick' && above.length > 0 && parity(end - first) === 1
  const moved = isOutOfStep ? moveRows(below, towards(above.at(-1), below[0])) : below
  const shift = first === 0 ? { row: -end, at: 0 } : undefined
  return liftedEdit(chart, { stitch, rows: [...above, ...moved] }, shift)
}

function towards(above: ChartRow | undefined, below: ChartRow | undefined): -1 | 1 {
  return above !== undefined && below !== undefined && below.start < above.start ? 1 : -1
}

function moveRows(rows: readonly ChartRow[], by: number): readonly ChartRow[] {
  return rows.map(({ start, cells }): ChartRow => ({ start: start + by, cells }))
}
