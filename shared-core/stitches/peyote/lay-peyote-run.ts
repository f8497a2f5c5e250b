import { AROUND_EDGE, LEFT, RIGHT, STEP_UP, UP, WEAVE } from '../../route/event-codes.ts'
import { beginRow, turn } from '../../route/event-writer.ts'
import { findWeave } from '../../route/find-weave.ts'
import { weaverBeside } from '../../route/weaver-beside.ts'
import { latticeHops } from './peyote-hops.ts'
import { hookEdge, type PeyoteWork, passBead, pickBead, towards, workedAt } from './peyote-work.ts'

/** A run to work, in lattice numbers: its ends, the side it grows on and the way it is worked. */
export type PeyoteRunTask = Readonly<{ first: number; last: number; edge: number; along: number }>

/**
 * Works one run of a half row: each bead is strung, then the standing bead beyond it is passed.
 *
 * The thread comes to the run at the outer standing bead, or round the edge below the run's first
 * bead. @returns false when it cannot get there.
 */
export function layPeyoteRun(work: PeyoteWork, task: PeyoteRunTask): boolean {
  const { first, last, along, edge } = task
  const base = edge === UP ? 1 : -1
  const length = last - first + 1
  const beadAt = (at: number) => (along > 0 ? first + at : last - at)
  if (!comeTo(work, task, beadAt(0), base)) return false
  beginRow(work.writer, (work.lattice.rowOf[first] ?? 0) >> 1, along > 0 ? LEFT : RIGHT)
  const direction = towards(along)
  for (let at = 0; at < length; at += 1) {
    const bead = beadAt(at)
    pickBead(work, bead, direction)
    const standing = workedAt(work, bead, base, along)
    if (standing >= 0) passBead(work, standing, direction)
  }
  return true
}

/** Brings the thread to where the first bead of a run is picked up. */
function comeTo(work: PeyoteWork, { along }: PeyoteRunTask, bead: number, base: number): boolean {
  const direction = towards(along)
  const outer = workedAt(work, bead, base, -along)
  if (outer >= 0) {
    if (work.at === outer && work.writer.edge === (direction ^ 1))
      return turnBack(work, outer, base)
    return weave(work, (at, leaving) => at === outer && leaving === direction)
  }
  const below = workedAt(work, bead, 2 * base, 0)
  const inner = workedAt(work, bead, base, along)
  if (below < 0 && inner < 0) return false
  const back = direction ^ 1
  return weave(work, (at, leaving) => leaving === back && (at === below || at === inner))
}

/**
 * Turns back through the row's last bead, which has no standing bead beyond it: the first time at an
 * edge by a figure of eight through the two beads behind it, later round the edge thread that leaves.
 */
function turnBack(work: PeyoteWork, last: number, base: number): boolean {
  const back = work.writer.edge ^ 1
  const side = back === RIGHT ? 1 : -1
  const behind = workedAt(work, last, 2 * base, 0)
  const beside = workedAt(work, last, base, side)
  if (hookEdge(work)) {
    passBead(work, last, back, STEP_UP)
    return true
  }
  if (behind < 0 || beside < 0) return turnRoundSide(work, last)
  return figureOfEight(work, { last, behind, beside, base, side })
}

/** A bead that widens the row has nothing behind it: the thread comes back along its outer side. */
function turnRoundSide(work: PeyoteWork, last: number): boolean {
  turn(work.writer, AROUND_EDGE, work.rows.beadOf[last] ?? 0)
  work.shownAt.push(last)
  return true
}

type Turn = Readonly<{ last: number; behind: number; beside: number; base: number; side: number }>

/**
 * The figure of eight: through the bead behind the last and on through the one beside both, round to
 * the next, back across, and into the last bead from its outer end. The two ways cross in `beside`.
 */
function figureOfEight(work: PeyoteWork, { last, behind, beside, base, side }: Turn): boolean {
  const inwards = towards(side)
  const near = workedAt(work, beside, -base, side)
  const far = workedAt(work, beside, base, side)
  passBead(work, behind, inwards, STEP_UP)
  passBead(work, beside, inwards, STEP_UP)
  if (near >= 0 && far >= 0) {
    passBead(work, near, inwards, STEP_UP)
    passBead(work, far, inwards ^ 1, STEP_UP)
  } else {
    turn(work.writer, AROUND_EDGE, work.rows.beadOf[beside] ?? 0)
  }
  passBead(work, beside, inwards ^ 1, STEP_UP)
  passBead(work, behind, inwards ^ 1, STEP_UP)
  passBead(work, last, inwards, STEP_UP)
  return true
}

/** Weaves the cheapest way, in lattice numbers; false when the thread cannot get there. */
function weave(work: PeyoteWork, isTarget: (bead: number, edge: number) => boolean): boolean {
  if (isTarget(work.at, work.writer.edge)) return true
  work.weaver ??= weaverBeside(work.writer, work.holds, work.rows.beadOf)
  const from = { bead: work.at, edge: work.writer.edge }
  const way = findWeave(work.weaver, from, latticeHops(work), isTarget)
  if (way === undefined) return false
  for (const { bead, edge } of way) {
    if (bead === work.at) hookEdge(work)
    else if (isInSight(work, bead, edge)) work.shownAt.push(work.at)
    passBead(work, bead, edge, WEAVE)
  }
  return true
}

/** Turning back into another column means running along the bead's own side. */
function isInSight({ lattice, at, writer }: PeyoteWork, bead: number, edge: number): boolean {
  return writer.edge === (edge ^ 1) && lattice.atOf[at] !== lattice.atOf[bead]
}
