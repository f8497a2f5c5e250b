import { DOWN, LEFT, UP } from '../../route/event-codes.ts'
import type { Hops } from '../../route/find-weave.ts'
import type { PartGeometry } from '../../route/part-geometry.ts'
import { type PlainWork, workedBeside } from './plain-work.ts'

/** Cost of one more pass beside its length, mm. */
const PASS_MM = 0.2

/** Cost of turning round a thread between two beads, mm beside its length: a plain way is liked better. */
const TURN_MM = 4

/** Cost of turning back where nothing lies beside, mm: only when there is no other way. */
const IN_SIGHT_MM = 60

/**
 * Where a thread can travel where beads stand in columns: on through the next bead along the hole,
 * back through the bead beside, whose hole end lies next to the one the thread leaves, or round the
 * thread between the two into the same bead; back at a bare edge only as a last resort.
 */
export function columnHops(
  work: PlainWork,
  { diameterMm, lengthMm }: PartGeometry,
  startSide: 'left' | 'right' = 'left',
): Hops {
  const along = startSide === 'left' ? 1 : -1
  const through = (lengthMm[0] ?? 0) + PASS_MM
  const besideMm = (diameterMm[0] ?? 0) + through
  return (bead, edge, visit) => {
    const isUpright = edge === UP || edge === DOWN
    const step = edge === UP || edge === LEFT ? -1 : 1
    const onward = isUpright
      ? workedBeside(work, bead, step, 0)
      : workedBeside(work, bead, 0, 2 * step)
    if (onward >= 0) visit(onward, edge, through)
    visit(bead, edge ^ 1, through + IN_SIGHT_MM)
    for (let side = -1; side <= 1; side += 2) {
      const beside = isUpright
        ? workedBeside(work, bead, 0, 2 * along * side)
        : workedBeside(work, bead, side, 0)
      if (beside < 0) continue
      visit(beside, edge ^ 1, besideMm)
      visit(bead, edge ^ 1, besideMm + TURN_MM)
    }
  }
}
