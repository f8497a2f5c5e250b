import type { CellRef, Chart } from '../../../../shared-core/chart/chart.ts'
import type { ChartEdit } from '../../../../shared-core/chart/edits/chart-edit.ts'
import {
  type Clip,
  copyCells,
  moveCells,
  pasteCells,
  snapAnchor,
} from '../../../../shared-core/chart/edits/clip.ts'
import type { Stroke } from '../../../../shared-core/chart/edits/draw-line.ts'
import {
  type CellSpan,
  rectangleSpans,
} from '../../../../shared-core/chart/edits/draw-rectangle.ts'
import type { Mirror } from '../../../../shared-core/chart/edits/mirror-chart.ts'
import { boxAxes, mirroredRuns } from '../../../../shared-core/chart/edits/mirror-runs.ts'
import { writeRuns } from '../../../../shared-core/chart/edits/write-runs.ts'
import { minus, plus } from './cells.ts'

/** An edit that puts beads somewhere, and the box they come to lie in, in cells of the chart after it. */
export type Placed = Readonly<{ edit: ChartEdit; box: Stroke }>

/** Takes away the beads of a selection. */
export function takeAway(chart: Chart, spans: readonly CellSpan[]): ChartEdit {
  return writeRuns(
    chart,
    spans.map(({ row, from, to }) => ({ row, at: from, count: (to - from) / 2, cell: 0 })),
  )
}

/** Moves the beads of a box; `undefined` when there are none. */
export function moveSelection(chart: Chart, box: Stroke, by: CellRef): Placed | undefined {
  const selection = rectangleSpans(chart, box)
  const clip = copyCells(chart, selection)
  if (clip === undefined) return undefined
  const to = plus(clip.anchor, by)
  const edit = moveCells(chart, { selection, to })
  const moved = minus(snapAnchor(chart, clip, to), clip.anchor)
  return { edit, box: lifted({ from: plus(box.from, moved), to: plus(box.to, moved) }, edit) }
}

/** Puts a clip down at a cell. */
export function pasteAt(chart: Chart, clip: Clip, to: CellRef): Placed {
  const edit = pasteCells(chart, clip, to)
  const moved = minus(snapAnchor(chart, clip, to), clip.anchor)
  const rows = clip.runs.map(({ row }) => row)
  const lefts = clip.runs.map(({ at }) => at)
  const rights = clip.runs.map(({ at, count }) => at + 2 * (count - 1))
  const box = {
    from: plus({ row: least(rows), at: least(lefts) }, moved),
    to: plus({ row: -least(rows.map((row) => -row)), at: -least(rights.map((at) => -at)) }, moved),
  }
  return { edit, box: lifted(box, edit) }
}

/** Mirrors the beads of a box in its own middle. */
export function mirrorSelection(chart: Chart, { from, to }: Stroke, way: Mirror): ChartEdit {
  const spans = rectangleSpans(chart, { from, to })
  const clip = copyCells(chart, spans)
  if (clip === undefined) return writeRuns(chart, [])
  const axes = boxAxes(chart.stitch, {
    firstRow: Math.min(from.row, to.row),
    lastRow: Math.max(from.row, to.row),
    minAt: Math.min(from.at, to.at),
    maxAt: Math.max(from.at, to.at),
  })
  const away = clip.runs.map((run) => ({ ...run, cell: 0 }))
  return writeRuns(chart, [...away, ...mirroredRuns(clip.runs, axes, way)])
}

/** A box in cells of the chart after an edit that may have lifted it. */
function lifted({ from, to }: Stroke, { shift }: ChartEdit): Stroke {
  return { from: plus(from, shift), to: plus(to, shift) }
}

function least(values: readonly number[]): number {
  return values.reduce((low, value) => Math.min(low, value), Number.POSITIVE_INFINITY)
}
