import type { CellRef, Chart, StitchKind } from '../chart.ts'
import { parity, rowPhases } from '../row-phase.ts'
import { isOddColumn } from '../stitch-pitch.ts'
import type { ChartEdit } from './chart-edit.ts'
import type { CellSpan } from './draw-rectangle.ts'
import { type CellRun, writeRuns } from './write-runs.ts'

/** Beads copied from a chart: runs where they lay, and the cell they are held by when they are put down. */
export type Clip = Readonly<{ stitch: StitchKind; anchor: CellRef; runs: readonly CellRun[] }>

/** Copies the beads of a selection, or gives `undefined` when there are none. Held by the first bead, top left. */
export function copyCells(chart: Chart, selection: readonly CellSpan[]): Clip | undefined {
  const runs = selection.flatMap((span) => [...beadRuns(chart, span)])
  const first = runs.reduce(
    (held: CellRun | undefined, run) =>
      held === undefined || run.row < held.row || (run.row === held.row && run.at < held.at)
        ? run
        : held,
    undefined,
  )
  if (first === undefined) return undefined
  return { stitch: chart.stitch, anchor: { row: first.row, at: first.at }, runs }
}

/**
 * Puts a clip down with its anchor at a cell.
 *
 * The place snaps to the stitch: to positions in step with the row, in right-angle weave to where
 * lying beads lie. A clip of peyote moved by an odd number of columns also moves by half a row, so
 * that it keeps its shape. Its blanks let what lies below be.
 */
export function pasteCells(chart: Chart, clip: Clip, to: CellRef): ChartEdit {
  return writeRuns(chart, movedRuns(chart, clip, to))
}

/** Moves the beads of a selection so that its first bead comes to a cell, snapped as when pasting. */
export function moveCells(
  chart: Chart,
  { selection, to }: Readonly<{ selection: readonly CellSpan[]; to: CellRef }>,
): ChartEdit {
  const clip = copyCells(chart, selection)
  if (clip === undefined) return writeRuns(chart, [])
  const lifted = clip.runs.map((run) => ({ ...run, cell: 0 }))
  return writeRuns(chart, [...lifted, ...movedRuns(chart, clip, to)])
}

/** The cell a clip's anchor lands on when it is put down at `to`: what a preview shows. */
export function snapAnchor(chart: Chart, { anchor }: Clip, to: CellRef): CellRef {
  if (chart.stitch === 'right-angle-weave') {
    const even = (from: number, wanted: number): number =>
      from + 2 * Math.trunc((wanted - from) / 2)
    return { row: even(anchor.row, to.row), at: even(anchor.at, to.at) }
  }
  return { row: to.row, at: to.at - parity(to.at - rowPhases(chart)(to.row)) }
}

function* beadRuns(chart: Chart, { row, from, to }: CellSpan): Generator<CellRun> {
  const line = chart.rows[row]
  if (line === undefined) return
  const first = Math.max(0, Math.ceil((from - line.start) / 2))
  const end = Math.min(line.cells.length, Math.ceil((to - line.start) / 2))
  for (let i = first; i < end; ) {
    const cell = line.cells[i] ?? 0
    let next = i + 1
    while (next < end && line.cells[next] === cell) next += 1
    if (cell !== 0) yield { row, at: line.start + 2 * i, count: next - i, cell }
    i = next
  }
}

function* movedRuns(chart: Chart, clip: Clip, to: CellRef): Generator<CellRun> {
  const target = snapAnchor(chart, clip, to)
  const across = target.at - clip.anchor.at
  if (chart.stitch !== 'peyote' || parity(across / 2) === 0) {
    const down = target.row - clip.anchor.row
    for (const run of clip.runs) yield { ...run, row: run.row + down, at: run.at + across }
    return
  }
  // High and low columns change places, so that neighbours in a run part company.
  const down = halfRows(target) - halfRows(clip.anchor)
  for (const { row, at, count, cell } of clip.runs) {
    for (let i = 0; i < count; i += 1) {
      const column = at + 2 * i
      const height = halfRows({ row, at: column }) + down
      const moved = column + across
      yield { row: (height - (isOddColumn(moved) ? 1 : 0)) / 2, at: moved, count: 1, cell }
    }
  }
}

function halfRows({ row, at }: CellRef): number {
  return 2 * row + (isOddColumn(at) ? 1 : 0)
}
