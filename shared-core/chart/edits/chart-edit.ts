import type { CellRef, Chart, ChartRow, StitchKind } from '../chart.ts'

/** Replaces `remove` rows from `row` on by `insert`; rows are numbered as in the chart before the patch. */
export type RowSplice = Readonly<{ row: number; remove: number; insert: readonly ChartRow[] }>

/**
 * A change of a chart: splices from the top, apart from each other.
 *
 * `shift` says how far the cells that were there before have moved, in rows and half beads: a drawing
 * that grows to the left or at the top moves the rest.
 */
export type ChartPatch = Readonly<{
  stitch: StitchKind
  splices: readonly RowSplice[]
  shift: CellRef
}>

/** An edited chart and the patch that takes the edit back. Rows that did not change are shared. */
export type ChartEdit = Readonly<{ chart: Chart; inverse: ChartPatch; shift: CellRef }>

/** No movement. */
export const NO_SHIFT: CellRef = { row: 0, at: 0 }

/**
 * Applies a patch and gives its own inverse, so that undo and redo are the same act.
 *
 * Copies the list of rows and nothing of the rows themselves. The patch must belong to this chart.
 */
export function applyPatch(chart: Chart, patch: ChartPatch): ChartEdit {
  const rows: ChartRow[] = []
  const splices: RowSplice[] = []
  let from = 0
  for (const { row, remove, insert } of patch.splices) {
    for (let i = from; i < row; i += 1) rows.push(chart.rows[i] as ChartRow)
    from = row + remove
    const taken = chart.rows.slice(row, from)
    splices.push({ row: rows.length, remove: insert.length, insert: taken })
    for (const inserted of insert) rows.push(inserted)
  }
  for (let i = from; i < chart.rows.length; i += 1) rows.push(chart.rows[i] as ChartRow)
  const back = { row: -patch.shift.row || 0, at: -patch.shift.at || 0 }
  return {
    chart: { stitch: patch.stitch, rows },
    inverse: { stitch: chart.stitch, splices, shift: back },
    shift: patch.shift,
  }
}

/**
 * The edit that leads from one chart to another: rows are compared by identity, so an edit that keeps
 * the rows it does not touch has a small inverse.
 */
export function editTo(chart: Chart, edited: Chart, shift: CellRef = NO_SHIFT): ChartEdit {
  const back = { row: -shift.row || 0, at: -shift.at || 0 }
  const splices =
    chart.rows.length === edited.rows.length
      ? changedRuns(edited.rows, chart.rows)
      : changedMiddle(edited.rows, chart.rows)
  return { chart: edited, inverse: { stitch: chart.stitch, splices, shift: back }, shift }
}

/** An edit that changes nothing. */
export function noEdit(chart: Chart): ChartEdit {
  return editTo(chart, chart)
}

type Rows = readonly ChartRow[]

function changedRuns(from: Rows, to: Rows): readonly RowSplice[] {
  const splices: RowSplice[] = []
  for (let row = 0; row < from.length; row += 1) {
    if (from[row] === to[row]) continue
    let end = row + 1
    while (end < from.length && from[end] !== to[end]) end += 1
    splices.push({ row, remove: end - row, insert: to.slice(row, end) })
    row = end
  }
  return splices
}

function changedMiddle(from: Rows, to: Rows): readonly RowSplice[] {
  const most = Math.min(from.length, to.length)
  let head = 0
  while (head < most && from[head] === to[head]) head += 1
  let tail = 0
  while (tail < most - head && from.at(-1 - tail) === to.at(-1 - tail)) tail += 1
  return [
    { row: head, remove: from.length - tail - head, insert: to.slice(head, to.length - tail) },
  ]
}
