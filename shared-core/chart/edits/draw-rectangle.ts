import type { Chart } from '../chart.ts'
import { MAX_ROWS } from '../chart-limits.ts'
import { parity, rowPhases } from '../row-phase.ts'
import type { ChartEdit } from './chart-edit.ts'
import type { Stroke } from './draw-line.ts'
import { type CellRun, writeRuns } from './write-runs.ts'

/** A rectangle between two corner cells, full or its frame alone. */
export type Rectangle = Stroke & Readonly<{ isFilled: boolean }>

/** A stretch of cells in one row: those whose left edge lies from `from` up to, not including, `to`, in half beads. */
export type CellSpan = Readonly<{ row: number; from: number; to: number }>

/** Draws a rectangle of beads of one slot, or with slot -1 takes beads away. */
export function drawRectangle(chart: Chart, rectangle: Rectangle, slot: number): ChartEdit {
  return writeRuns(chart, rectangleRuns(chart, rectangle, slot))
}

/** The runs of cells that a rectangle of one slot is made of; with slot -1 they take beads away. */
export function rectangleRuns(chart: Chart, rectangle: Rectangle, slot: number): Iterable<CellRun> {
  const spans = rectangleSpans(chart, rectangle)
  return rectangle.isFilled ? fullRuns(spans, slot) : frameRuns(spans, slot)
}

/**
 * The stretches of a rectangle, a row each: the positions of each row that lie between its two corners.
 *
 * At most 100,000 rows.
 */
export function rectangleSpans(chart: Chart, { from, to }: Stroke): readonly CellSpan[] {
  const phaseOf = rowPhases(chart)
  const [top, bottom] = [Math.min(from.row, to.row), Math.max(from.row, to.row)]
  const [left, right] = [Math.min(from.at, to.at), Math.max(from.at, to.at)]
  const spans: CellSpan[] = []
  for (let row = top; row <= Math.min(bottom, top + MAX_ROWS - 1); row += 1) {
    const phase = phaseOf(row)
    const first = left + parity(left - phase)
    const last = right - parity(right - phase)
    if (last >= first) spans.push({ row, from: first, to: last + 2 })
  }
  return spans
}

function* fullRuns(spans: readonly CellSpan[], slot: number): Generator<CellRun> {
  for (const { row, from, to } of spans) {
    yield { row, at: from, count: (to - from) / 2, cell: slot + 1 }
  }
}

function* frameRuns(spans: readonly CellSpan[], slot: number): Generator<CellRun> {
  for (const [i, { row, from, to }] of spans.entries()) {
    if (i === 0 || i === spans.length - 1) {
      yield { row, at: from, count: (to - from) / 2, cell: slot + 1 }
    } else {
      yield { row, at: from, count: 1, cell: slot + 1 }
      yield { row, at: to - 2, count: 1, cell: slot + 1 }
    }
  }
}
