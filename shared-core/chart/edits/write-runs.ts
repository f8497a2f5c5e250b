import type { Chart, ChartRow } from '../chart.ts'
import { MAX_CELLS, MAX_COLUMNS, MAX_ROWS } from '../chart-limits.ts'
import { latticeStep, upTo } from '../lattice-step.ts'
import { parity, rowPhases } from '../row-phase.ts'
import { type ChartEdit, noEdit } from './chart-edit.ts'
import { liftedEdit } from './lift-chart.ts'

/** `count` cells in a row from `at` on, all set to `cell`: 0 takes beads away, else the slot's index plus one. */
export type CellRun = Readonly<{ row: number; at: number; count: number; cell: number }>

/**
 * Writes runs of cells into a chart; later runs win.
 *
 * Rows grow, and rows are added above and below, where beads are set outside the chart. A position out
 * of step with its row moves half a bead to the left. What would pass the limits of a chart
 * (4,000,000 cells, 100,000 rows or columns) is left out. Only the rows written are copied.
 */
export function writeRuns(chart: Chart, runs: Iterable<CellRun>): ChartEdit {
  const drafts = new Map<number, RowDraft>()
  const room = new Room(chart)
  const phaseOf = rowPhases(chart)
  for (const run of runs) {
    const draft = drafts.get(run.row) ?? draftOf(chart.rows[run.row])
    const at = run.at - parity(run.at - phaseOf(run.row))
    if (takeRun(draft, { ...run, at }, room)) drafts.set(run.row, draft)
  }
  return drafts.size === 0 ? noEdit(chart) : assemble(chart, drafts, phaseOf)
}

/** A row to be written: where its cells will lie and what will be set, so that it is made once. */
type RowDraft = {
  readonly row: ChartRow | undefined
  start: number
  length: number
  runs: CellRun[]
}

function draftOf(row: ChartRow | undefined): RowDraft {
  return { row, start: row?.start ?? 0, length: row?.cells.length ?? 0, runs: [] }
}

/** Adds a run to a draft, or says that nothing of it can be written. */
function takeRun(draft: RowDraft, run: CellRun, room: Room): boolean {
  const clipped = run.cell === 0 ? clip(run, draft) : run
  if (!(clipped.count > 0)) return false
  const range = rangeOver(draft, clipped)
  const growth = range.length - draft.length
  // Asked before anything is made: a run may be far larger than a chart can be.
  if (growth !== 0 && !room.take(clipped, growth)) return false
  draft.start = range.start
  draft.length = range.length
  draft.runs.push(clipped)
  return true
}

type Range = Readonly<{ start: number; length: number }>

/** Taking beads away never makes a row longer. */
function clip(run: CellRun, { start, length }: Range): CellRun {
  const from = Math.max(run.at, start)
  const to = Math.min(run.at + 2 * run.count, start + 2 * length)
  return { ...run, at: from, count: (to - from) / 2 }
}

function rangeOver(range: Range, { at, count }: CellRun): Range {
  if (range.length === 0) return { start: at, length: count }
  const start = Math.min(range.start, at)
  const end = Math.max(range.start + 2 * range.length, at + 2 * count)
  return { start, length: (end - start) / 2 }
}

function writtenRow({ row, start, length, runs }: RowDraft): ChartRow {
  const cells = new Uint16Array(length)
  if (row !== undefined && row.cells.length > 0) cells.set(row.cells, (row.start - start) / 2)
  for (const { at, count, cell } of runs) {
    const from = (at - start) / 2
    cells.fill(cell, from, from + count)
  }
  return { start, cells }
}

function assemble(
  chart: Chart,
  drafts: ReadonlyMap<number, RowDraft>,
  phaseOf: (row: number) => number,
): ChartEdit {
  let [top, bottom] = [0, chart.rows.length]
  for (const row of drafts.keys()) {
    top = Math.min(top, row)
    bottom = Math.max(bottom, row + 1)
  }
  const added = upTo(-top, latticeStep(chart.stitch).down)
  const above = Array.from({ length: added }, (_, i) => emptyRow(phaseOf(i - added)))
  const rows: ChartRow[] = [...above, ...chart.rows]
  for (let row = chart.rows.length; row < bottom; row += 1) rows.push(emptyRow(phaseOf(row)))
  for (const [row, draft] of drafts) rows[row + added] = writtenRow(draft)
  return liftedEdit(chart, { stitch: chart.stitch, rows }, { row: added, at: 0 })
}

function emptyRow(start: number): ChartRow {
  return { start, cells: new Uint16Array(0) }
}

/** How far a chart may still grow; measured only when something grows. */
class Room {
  readonly #chart: Chart
  #extent: Extent | undefined

  constructor(chart: Chart) {
    this.#chart = chart
  }

  /** Takes the room a run needs, or says that there is none. */
  take({ row, at, count }: CellRun, growth: number): boolean {
    this.#extent ??= measure(this.#chart)
    const grown = {
      cells: this.#extent.cells + growth,
      top: Math.min(this.#extent.top, row),
      bottom: Math.max(this.#extent.bottom, row + 1),
      left: Math.min(this.#extent.left, at),
      right: Math.max(this.#extent.right, at + 2 * count),
    }
    const fits =
      grown.cells <= MAX_CELLS &&
      span(grown).rows <= Math.max(MAX_ROWS - STEP_ROOM.rows, span(this.#extent).rows) &&
      span(grown).across <= Math.max(2 * MAX_COLUMNS - STEP_ROOM.across, span(this.#extent).across)
    if (fits) this.#extent = grown
    return fits
  }
}

type Extent = Readonly<{ cells: number; top: number; bottom: number; left: number; right: number }>

/** Kept free, so that a chart that grows at the top or left stays within the limits when it is moved by a step. */
const STEP_ROOM = { rows: 1, across: 4 }

function span({ top, bottom, left, right }: Extent) {
  return { rows: bottom - top, across: right - left }
}

function measure({ rows }: Chart): Extent {
  const extent = { cells: 0, top: 0, bottom: rows.length, left: 0, right: 0 }
  for (const { start, cells } of rows) {
    extent.cells += cells.length
    extent.right = Math.max(extent.right, start + 2 * cells.length)
  }
  return extent
}
