import { LEFT, LOCK, RIGHT } from '../../route/event-codes.ts'
import { beginRow, hook, pickUp } from '../../route/event-writer.ts'
import { weaveTo } from './brick-weave.ts'
import {
  type BrickWork,
  isBridged,
  passBead,
  pickOne,
  pickTwo,
  rowStep,
  workedBead,
} from './brick-work.ts'
import { findHook, findTouched } from './find-hook.ts'
import { ladderOn } from './lay-brick-start.ts'

/** A run to work: its beads at both ends (leftmost first), the side it grows on and the way it is worked. */
export type RunTask = Readonly<{
  first: number
  last: number
  edge: number
  /** 1 to the right, -1 to the left. */
  along: number
  lockAlways: boolean
  /** Nothing grows on from this run. */
  isTip: boolean
}>

/**
 * Works one run of a row on the beads worked before it; false when it cannot be stitched there.
 *
 * Two beads at once, the second hung on the bridge under it; beads beyond the start are laddered onto
 * the first; then one bead at a time, each on its own bridge, on the last bridge again where it
 * overhangs by half, laddered onto the one before where nothing lies under it.
 */
export function layBrickRun(work: BrickWork, task: RunTask): boolean {
  const { first, last, edge, along } = task
  const length = last - first + 1
  const beadAt = (at: number) => (along > 0 ? first + at : last - at)
  if (length === 1) return laySingle(work, task)
  let start = 0
  while (start < length && findTouched(work, beadAt(start), edge, along) < 0) start += 1
  if (start === length) return false
  const next = layFirst(work, task, beadAt, start)
  if (next < 0) return false
  for (let at = next; at < length; at += 1) layNext(work, beadAt(at), edge, along)
  return true
}

type BeadAt = (at: number) => number

/** Starts a run at its bead number `start`; gives the number of the next bead to add, or -1 where it cannot hold. */
function layFirst(work: BrickWork, task: RunTask, beadAt: BeadAt, start: number): number {
  const { edge, along, first, last } = task
  const bead = beadAt(start)
  const second = start <= last - first - 1 ? beadAt(start + 1) : -1
  if (findHook(work, bead, edge, along) === undefined) {
    return layOnNeck(work, task, beadAt, start)
  }
  if (!goToFoot(work, task, bead)) return -1
  const bridge = second < 0 ? undefined : findHook(work, second, edge, along)
  beginTaskRow(work, task)
  if (bridge === undefined) {
    hangOne(work, bead, edge, along)
    return addBefore(work, edge, beadAt, start, bead) ? start + 1 : -1
  }
  pickTwo(work, bead, second, edge)
  hook(work.writer, bridge.a, bridge.b, edge)
  passBead(work, second, edge)
  closeSeam(work, second, edge)
  if (start > 0) {
    passBead(work, bead, edge ^ 1, LOCK)
    return addBefore(work, edge, beadAt, start, second) ? start + 2 : -1
  }
  const isInside = workedBead(work, bead, -rowStep(edge), -along) >= 0
  if (isInside || task.lockAlways) {
    passBead(work, bead, edge ^ 1, LOCK)
    passBead(work, second, edge, LOCK)
  }
  return start + 2
}

/** Ladders the beads before `start` onto it, outwards, and comes back to leave `end` on the row's edge. */
function addBefore(
  work: BrickWork,
  edge: number,
  beadAt: BeadAt,
  start: number,
  end: number,
): boolean {
  if (start === 0) return true
  for (let at = start - 1; at >= 0; at -= 1) ladderOn(work, beadAt(at))
  return weaveTo(work, (bead, leaving) => bead === end && leaving === edge)
}

/** Brings the thread to the outward end of a bead that `bead` touches. */
function goToFoot(work: BrickWork, { edge, along }: RunTask, bead: number): boolean {
  const base = -rowStep(edge)
  const behind = workedBead(work, bead, base, -along)
  const ahead = workedBead(work, bead, base, along)
  return weaveTo(work, (at, leaving) => leaving === edge && (at === behind || at === ahead))
}

function beginTaskRow({ index, writer }: BrickWork, { first, along }: RunTask): void {
  beginRow(writer, index.rowOf[first] ?? 0, along > 0 ? LEFT : RIGHT)
}

/** Adds one bead: down through it, under its bridge, up through it. */
function hangOne(work: BrickWork, bead: number, edge: number, along: number): void {
  const bridge = findHook(work, bead, edge, along)
  pickOne(work, bead, edge ^ 1)
  if (bridge !== undefined) hook(work.writer, bridge.a, bridge.b, edge)
  passBead(work, bead, edge)
  closeSeam(work, bead, edge)
}

/** Where the row grows into work that is there already, the bridge that faces it is taken up on the way. */
function closeSeam(work: BrickWork, bead: number, edge: number): void {
  const beyond = rowStep(edge)
  const left = workedBead(work, bead, beyond, -1)
  const right = workedBead(work, bead, beyond, 1)
  if (left < 0 && right < 0) return
  if (left >= 0 && right >= 0 && isBridged(work, left, edge ^ 1)) {
    hook(work.writer, left, right, edge ^ 1)
  } else {
    work.openSeams.push(bead)
  }
}

function layNext(work: BrickWork, bead: number, edge: number, along: number): void {
  const bridge = findHook(work, bead, edge, along)
  if (bridge === undefined) {
    ladderOn(work, bead)
    return
  }
  if (work.writer.edge === edge) {
    hangOne(work, bead, edge, along)
    return
  }
  // After an odd number of laddered beads the thread lies at the foot: hang this one from there, then ladder it.
  const before = work.writer.bead
  hook(work.writer, bridge.a, bridge.b, edge)
  pickOne(work, bead, edge)
  passBead(work, before, edge ^ 1)
  passBead(work, bead, edge)
}

/**
 * Starts a run on a single bead that has no bridge: both beads are held by going down through that
 * bead, round the bridge it hangs on itself, and up again.
 */
function layOnNeck(work: BrickWork, task: RunTask, beadAt: BeadAt, start: number): number {
  const { edge, along, first, last } = task
  const neck = findTouched(work, beadAt(start), edge, along)
  const length = last - first + 1
  const isBetween = start + 1 < length && findTouched(work, beadAt(start + 1), edge, along) === neck
  const far = isBetween || start === 0 ? start : start - 1
  const near = isBetween || start === 0 ? start + 1 : start
  const anchor = neck < 0 ? undefined : findHook(work, neck, edge, along)
  if (anchor === undefined || near >= length) return -1
  if (!weaveTo(work, (at, leaving) => leaving === edge && at === neck)) return -1
  beginTaskRow(work, task)
  pickTwo(work, beadAt(far), beadAt(near), edge)
  passBead(work, neck, edge ^ 1)
  hook(work.writer, anchor.a, anchor.b, edge)
  passBead(work, neck, edge)
  passBead(work, beadAt(near), edge)
  work.necks.push(neck)
  if (far > 0) {
    passBead(work, beadAt(far), edge ^ 1, LOCK)
    if (!addBefore(work, edge, beadAt, far, beadAt(near))) return -1
  }
  return near + 1
}

/**
 * A run of one bead. At a tip it lies across between the two beads under it, so that the thread comes
 * back into the work; elsewhere it hangs on its bridge like any other.
 */
function laySingle(work: BrickWork, task: RunTask): boolean {
  const { first: bead, edge, along } = task
  const base = -rowStep(edge)
  const behind = workedBead(work, bead, base, -along)
  const ahead = workedBead(work, bead, base, along)
  const isAcross = task.isTip && behind >= 0 && ahead >= 0
  if (!isAcross && findHook(work, bead, edge, along) === undefined) return false
  if (!goToFoot(work, task, bead)) return false
  beginTaskRow(work, task)
  if (!isAcross) {
    hangOne(work, bead, edge, along)
    return true
  }
  const from = work.writer.bead
  layAcross(work, bead, from === behind ? along : -along)
  passBead(work, from === behind ? ahead : behind, edge ^ 1)
  return true
}

/** Strings a bead that lies across: it is in the work, but no thread can travel through it upright. */
export function layAcross(work: BrickWork, bead: number, side: number): void {
  pickUp(work.writer, bead, side > 0 ? RIGHT : LEFT)
  work.worked[bead] = 2
}
