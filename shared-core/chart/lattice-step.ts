import type { StitchKind } from './chart.ts'

/**
 * The least movement of a whole chart that leaves the work as it is, in half beads across and rows down.
 *
 * Peyote moves by two columns, because odd ones hang lower; herringbone by a pair; right-angle weave
 * by a unit; brick by half a bead.
 */
export function latticeStep(stitch: StitchKind): Readonly<{ across: number; down: number }> {
  switch (stitch) {
    case 'brick':
      return { across: 1, down: 1 }
    case 'peyote':
    case 'herringbone':
      return { across: 4, down: 1 }
    case 'right-angle-weave':
      return { across: 2, down: 2 }
    default:
      return { across: 2, down: 1 }
  }
}

/** The next multiple of `step` that is not below `value`. */
export function upTo(value: number, step: number): number {
  return Math.ceil(value / step) * step || 0
}
