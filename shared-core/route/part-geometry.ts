import type { BeadForm } from '../beads/bead-form.ts'
import type { BeadIndex } from '../chart/bead-index.ts'
import type { Chart } from '../chart/chart.ts'
import { layoutChart } from '../chart/layout.ts'
import { holeAxis, threadGapMm } from '../chart/stitch-pitch.ts'
import { DOWN, LEFT, UP } from './event-codes.ts'
import { takenPlayMm } from './thread-slack.ts'

/**
 * Where a part's beads lie for its thread, in mm, y down; arrays over bead numbers.
 *
 * `upright` is 1 where the hole runs up and down, 0 where it runs across. A bead's hole ends lie half
 * its length from its centre. `strung` is true for strands, whose neighbours touch hole to hole.
 */
export type PartGeometry = Readonly<{
  count: number
  xMm: Float32Array
  yMm: Float32Array
  upright: Uint8Array
  lengthMm: Float32Array
  diameterMm: Float32Array
  /** The thread as it lies in a hole. */
  threadMm: number
  strung: boolean
  /** What a run from hole to hole is shortened by, because the thread hugs the walls, mm. */
  playMm: number
  /** Length of the beads of another part that this part's thread passes where it joins, mm. */
  joinLengthMm: number
}>

/** The geometry of a panel's beads, all of one form, at its nominal size. */
export function panelGeometry(
  chart: Chart,
  index: BeadIndex,
  form: BeadForm,
  threadMm: number,
): PartGeometry {
  const { xMm, yMm } = layoutChart(chart, form, { threadMm: threadGapMm(threadMm) })
  const upright = new Uint8Array(index.count)
  for (let row = 0; row + 1 < index.rowStart.length; row += 1) {
    const axis = holeAxis(chart.stitch, row) === 'vertical' ? 1 : 0
    upright.fill(axis, index.rowStart[row], index.rowStart[row + 1])
  }
  return {
    count: index.count,
    xMm,
    yMm,
    upright,
    lengthMm: new Float32Array(index.count).fill(form.lengthMm.value),
    diameterMm: new Float32Array(index.count).fill(form.diameterMm.value),
    threadMm,
    strung: false,
    playMm: takenPlayMm(chart.stitch, form.holeMm.value, threadMm),
    joinLengthMm: form.lengthMm.value,
  }
}

/** Across-position of the hole end of `bead` on its `edge` side (a direction code), mm. */
export function holeEndX(geometry: PartGeometry, bead: number, edge: number): number {
  const x = geometry.xMm[bead] ?? 0
  if (edge === UP || edge === DOWN) return x
  const half = (geometry.lengthMm[bead] ?? 0) / 2
  return edge === LEFT ? x - half : x + half
}

/** Down-position of the hole end of `bead` on its `edge` side (a direction code), mm. */
export function holeEndY(geometry: PartGeometry, bead: number, edge: number): number {
  const y = geometry.yMm[bead] ?? 0
  if (edge !== UP && edge !== DOWN) return y
  const half = (geometry.lengthMm[bead] ?? 0) / 2
  return edge === UP ? y - half : y + half
}
