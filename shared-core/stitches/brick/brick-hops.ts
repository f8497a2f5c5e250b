import type { Hops } from '../../route/find-weave.ts'
import type { PartGeometry } from '../../route/part-geometry.ts'
import { type BrickWork, type HopCosts, isBridged, rowStep, workedBead } from './brick-work.ts'

/** Cost of one more pass beside its length, mm: of two ways as long, the one through fewer beads. */
const PASS_MM = 0.2

/** Cost of turning round a bridge beside its length, mm: a turn pulls at the bridge, so a plain way is liked better. */
const TURN_MM = 4

/** Cost of running along the outside of a bead where the thread shows, mm: only when there is no other way. */
const IN_SIGHT_MM = 60

/** The costs of travelling, from the size of the beads and the gap between rows. */
export function hopCosts(
  { diameterMm, lengthMm, threadMm }: PartGeometry,
  gapMm: number,
): HopCosts {
  const d = diameterMm[0] ?? 0
  const through = (lengthMm[0] ?? 0) + PASS_MM
  return {
    beside: d + through,
    next: Math.hypot(d / 2, gapMm) + through,
    turn: d + Math.PI * threadMm + through + TURN_MM,
    inSight: Math.hypot(d / 2, (lengthMm[0] ?? 0) + gapMm) + through + IN_SIGHT_MM,
  }
}

/**
 * Where a thread can travel in brick work: from a hole end into the neighbour in the row (where the
 * run is covered by a bead or beside a bridge), into the two beads of the next row, or round a bridge
 * back into the same bead; in sight along the side of a tip only as a last resort.
 */
export function brickHops(work: BrickWork): Hops {
  const { hopMm, along } = work
  return (bead, edge, visit) => {
    const row = rowStep(edge)
    for (let turn = 0; turn < 2; turn += 1) {
      const side = turn === 0 ? along : -along
      const beside = workedBead(work, bead, 0, 2 * side)
      if (beside >= 0 && isCovered(work, Math.min(bead, beside), edge, row)) {
        visit(beside, edge ^ 1, hopMm.beside)
      }
      if (beside >= 0 && isBridged(work, Math.min(bead, beside), edge)) {
        visit(bead, edge ^ 1, hopMm.turn)
      }
      const next = workedBead(work, bead, row, side)
      if (next >= 0) visit(next, edge, hopMm.next)
      const inward = workedBead(work, bead, -row, side)
      if (inward >= 0) visit(inward, edge ^ 1, hopMm.inSight)
    }
  }
}

function isCovered(work: BrickWork, left: number, edge: number, row: number): boolean {
  return isBridged(work, left, edge) || workedBead(work, left, row, 1) >= 0
}
