import { RIGHT } from '../../route/event-codes.ts'
import type { Hops } from '../../route/find-weave.ts'
import type { PartGeometry } from '../../route/part-geometry.ts'
import {
  edgeThreadsBeside,
  hasEdgeThread,
  type PeyoteHopCosts,
  type PeyoteWork,
  workedAt,
} from './peyote-work.ts'

/** Cost of one more pass beside its length, mm. */
const PASS_MM = 0.2

/** Cost of turning round an edge thread, mm beside its length: a plain way is liked better. */
const TURN_MM = 4

/** Cost of turning back down a column where no edge thread lies yet, mm: the turn shows between the beads. */
const COLUMN_MM = 2

/** Cost of running along the outside of a bead where the thread shows, mm: only when there is no other way. */
const IN_SIGHT_MM = 60

/** The costs of travelling, from the size of the beads. */
export function peyoteHopCosts({ diameterMm, lengthMm, threadMm }: PartGeometry): PeyoteHopCosts {
  const d = diameterMm[0] ?? 0
  const through = (lengthMm[0] ?? 0) + PASS_MM
  return {
    onward: d / 2 + through,
    column: d + through + COLUMN_MM,
    inSight: (lengthMm[0] ?? 0) + d / 2 + through + IN_SIGHT_MM,
    turn: d + Math.PI * threadMm + through + TURN_MM,
  }
}

/**
 * Where a thread can travel in peyote, in lattice numbers: on through the beads half a row up or
 * down, back through the next bead of the column, or round an edge thread back into the same bead; in
 * sight along a bead's outer side only as a last resort.
 */
export function latticeHops(work: PeyoteWork): Hops {
  const { hopMm } = work
  return (bead, edge, visit) => {
    const side = edge === RIGHT ? 1 : -1
    for (let half = 1; half >= -1; half -= 2) {
      const onward = workedAt(work, bead, half, side)
      if (onward >= 0) visit(onward, edge, hopMm.onward)
    }
    for (let half = 1; half >= -1; half -= 2) {
      const inward = workedAt(work, bead, half, -side)
      if (inward >= 0) visit(inward, edge ^ 1, hopMm.inSight)
    }
    for (let half = 2; half >= -2; half -= 4) {
      const next = workedAt(work, bead, half, 0)
      if (next >= 0) visit(next, edge ^ 1, hopMm.column)
    }
    for (const [upper] of edgeThreadsBeside(work, bead)) {
      if (hasEdgeThread(work, upper, edge)) visit(bead, edge ^ 1, hopMm.turn)
    }
  }
}

/** The same ways in the chart's own bead numbers, for weaving ends in. */
export function peyoteHops(work: PeyoteWork): Hops {
  const { beadOf, numberOf } = work.rows
  const hops = latticeHops(work)
  return (bead, edge, visit) =>
    hops(numberOf[bead] ?? 0, edge, (to, exitEdge, costMm) =>
      visit(beadOf[to] ?? 0, exitEdge, costMm),
    )
}
