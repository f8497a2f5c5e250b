import { beadExtent } from '../bead-extent.ts'
import type { Chart, StitchKind } from '../chart.ts'
import { parity } from '../row-phase.ts'
import { isOddColumn } from '../stitch-pitch.ts'
import type { Mirror } from './mirror-chart.ts'
import type { CellRun } from './write-runs.ts'

/**
 * The axes of a mirror: `across` is the sum of two mirrored positions in half beads, `down` the sum
 * of two mirrored rows, in peyote of two mirrored half rows.
 */
export type MirrorAxes = Readonly<{ stitch: StitchKind; across: number; down: number }>

/**
 * The axes through the middle of a chart's beads, moved by the least that lets every cell land on a
 * cell of the stitch. `undefined` for a chart without beads.
 */
export function mirrorAxes({ stitch, rows }: Chart): MirrorAxes | undefined {
  const extent = beadExtent(rows)
  if (extent === undefined) return undefined
  const { firstRow, lastRow, minAt, maxAt } = extent
  return axesOf(stitch, { across: minAt + maxAt, down: firstRow + lastRow })
}

/** The axes of a box of cells, as `mirrorAxes` gives them for a chart. */
export function boxAxes(
  stitch: StitchKind,
  box: Readonly<{ firstRow: number; lastRow: number; minAt: number; maxAt: number }>,
): MirrorAxes {
  return axesOf(stitch, { across: box.minAt + box.maxAt, down: box.firstRow + box.lastRow })
}

function axesOf(
  stitch: StitchKind,
  { across, down }: Readonly<{ across: number; down: number }>,
): MirrorAxes {
  const even = (sum: number): number => sum - parity(sum)
  // Brick and right-angle weave change step from row to row, so rows an even number apart must meet.
  const isStepped = stitch === 'brick' || stitch === 'right-angle-weave'
  if (stitch === 'peyote') return { stitch, across: even(across), down: 2 * down }
  return { stitch, across: even(across), down: isStepped ? even(down) : down }
}

/** Runs of cells and their mirror images, the runs themselves first. */
export function* withMirrored(
  runs: Iterable<CellRun>,
  axes: MirrorAxes,
  mirror: Mirror | 'four-ways',
): Generator<CellRun> {
  const all = [...runs]
  yield* all
  const ways = mirror === 'four-ways' ? (['left-right', 'top-bottom', 'both'] as const) : [mirror]
  for (const way of ways) yield* mirroredRuns(all, axes, way)
}

/** The mirror images of runs. In peyote, where columns change place, a run becomes single cells. */
export function* mirroredRuns(
  runs: Iterable<CellRun>,
  { stitch, across, down }: MirrorAxes,
  mirror: Mirror,
): Generator<CellRun> {
  for (const run of runs) {
    const { row, at, count, cell } = run
    const left = mirror === 'top-bottom' ? at : across - at - 2 * (count - 1)
    if (mirror === 'left-right') yield { row, at: left, count, cell }
    else if (stitch !== 'peyote') yield { row: down - row, at: left, count, cell }
    else {
      for (let i = 0; i < count; i += 1) {
        const column = left + 2 * i
        const from = mirror === 'both' ? across - column : column
        const height = down - 2 * row - (isOddColumn(from) ? 1 : 0)
        yield { row: Math.floor(height / 2), at: column, count: 1, cell }
      }
    }
  }
}
