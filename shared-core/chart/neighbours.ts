import type { StitchKind } from './chart.ts'
import { parity } from './row-phase.ts'
import { isOddColumn } from './stitch-pitch.ts'

/** A step from a cell to one beside it: rows down, half beads to the right. */
export type CellStep = readonly [rows: number, halfBeads: number]

const GRID: readonly CellStep[] = [
  [0, -2],
  [0, 2],
  [-1, 0],
  [1, 0],
]

const BRICK: readonly CellStep[] = [
  [0, -2],
  [0, 2],
  [-1, -1],
  [-1, 1],
  [1, -1],
  [1, 1],
]

const PEYOTE_EVEN: readonly CellStep[] = [
  [-1, 0],
  [1, 0],
  [0, -2],
  [0, 2],
  [-1, -2],
  [-1, 2],
]

const PEYOTE_ODD: readonly CellStep[] = [
  [-1, 0],
  [1, 0],
  [0, -2],
  [0, 2],
  [1, -2],
  [1, 2],
]

const CORNERS: readonly CellStep[] = [
  [-1, -1],
  [-1, 1],
  [1, -1],
  [1, 1],
]

const RING_LYING: readonly CellStep[] = [...CORNERS, [0, -2], [0, 2]]
const RING_STANDING: readonly CellStep[] = [...CORNERS, [-2, 0], [2, 0]]

/**
 * The steps from a cell to those it touches in the work.
 *
 * Brick and peyote beads touch six others, those of square stitch, loom, ladder and herringbone four;
 * in right-angle weave the two joints of a bead hold three others each.
 */
export function neighbourSteps(stitch: StitchKind, row: number, at: number): readonly CellStep[] {
  switch (stitch) {
    case 'brick':
      return BRICK
    case 'peyote':
      return isOddColumn(at) ? PEYOTE_ODD : PEYOTE_EVEN
    case 'right-angle-weave':
      return parity(row) === 0 ? RING_LYING : RING_STANDING
    default:
      return GRID
  }
}
