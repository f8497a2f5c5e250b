import type { Refusal } from '../../refusal.ts'
import { err, ok, type Result } from '../../result.ts'
import type { Chart, ChartRow, StitchKind } from '../chart.ts'
import { MAX_CELLS, MAX_COLUMNS, MAX_ROWS } from '../chart-limits.ts'
import type { OutlineSize } from './chart-from-outline.ts'

/** How the sides of a blank chart run: straight down, or each line of work half a bead further on. */
export type BlankEdge = 'straight' | 'stepped'

/** A blank chart to make; in right-angle weave `columns` and `rows` count units. */
export type BlankOrder = OutlineSize &
  Readonly<{ stitch: StitchKind; edge?: BlankEdge /** The first when left out. */; slot?: number }>

/** Whether a stitch's rows lie half a bead out of step, so that its sides can be stepped. */
export function canStep(stitch: StitchKind): boolean {
  return stitch === 'brick' || stitch === 'peyote'
}

/**
 * A chart of one slot, every place filled, to be painted.
 *
 * Straight sides lean half a bead out and in by turns in brick. Stepped sides move half a bead to the
 * right at every brick row and a column at every peyote half row, as the work grows; other stitches are
 * straight always. Right-angle weave has a row of lying beads above and below each row of standing ones.
 *
 * @returns The chart; or `blank-size` when it would have no beads or pass a chart's limits.
 */
export function blankChart(order: BlankOrder): Result<Chart, Refusal> {
  const { stitch, columns, rows, slot = 0 } = order
  if (!isPossible(order)) return err(wrongSize())
  const isStepped = order.edge === 'stepped' && canStep(stitch)
  if (stitch === 'right-angle-weave') {
    return ok({ stitch, rows: weave({ columns, rows }, slot + 1) })
  }
  const perRow = isStepped ? (stitch === 'peyote' ? 4 : 1) : 0
  const cells = new Uint16Array(columns).fill(slot + 1)
  return ok({
    stitch,
    rows: Array.from({ length: rows }, (_, row) => ({
      start: isStepped ? row * perRow : stitch === 'brick' ? row % 2 : 0,
      cells,
    })),
  })
}

/** Lying beads at odd positions in even rows, standing ones at even positions between them. */
function weave({ columns, rows }: OutlineSize, cell: number): ChartRow[] {
  const lying = { start: 1, cells: new Uint16Array(columns).fill(cell) }
  const standing = { start: 0, cells: new Uint16Array(columns + 1).fill(cell) }
  return Array.from({ length: 2 * rows + 1 }, (_, row) => (row % 2 === 0 ? lying : standing))
}

function isPossible({ stitch, columns, rows, edge }: BlankOrder): boolean {
  if (!Number.isSafeInteger(columns) || !Number.isSafeInteger(rows)) return false
  if (columns < 1 || rows < 1) return false
  const perUnit = stitch === 'right-angle-weave' ? 2 : 1
  const slip = edge === 'stepped' && canStep(stitch) ? 2 * rows : 0
  return (
    columns + 1 + slip <= MAX_COLUMNS &&
    perUnit * rows + 1 <= MAX_ROWS &&
    (columns + 1) * (perUnit * rows + 1) <= MAX_CELLS
  )
}

function wrongSize(): Refusal {
  return {
    code: 'blank-size',
    message: 'A chart of this size has no beads, or more than a chart can hold.',
    next: `Ask for at least one bead each way, and ${MAX_CELLS} in all at most.`,
    field: 'columns',
  }
}
