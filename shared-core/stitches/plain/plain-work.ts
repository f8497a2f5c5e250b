import { type BeadIndex, findBead } from '../../chart/bead-index.ts'
import { AROUND_EDGE, DOWN, STITCH, UP, WEAVE } from '../../route/event-codes.ts'
import {
  createEventWriter,
  type EventWriter,
  pass,
  pickUp,
  pickUpAlso,
  turn,
} from '../../route/event-writer.ts'
import { findWeave, type Hops, type Weaver } from '../../route/find-weave.ts'
import { weaverBeside } from '../../route/weaver-beside.ts'
import type { StitchTask } from '../stitch.ts'

/** Work in progress in a stitch whose beads stand in columns. `worked` is 1 once a bead is in the work. */
export type PlainWork = {
  readonly index: BeadIndex
  readonly writer: EventWriter
  /** Passes each bead's hole holds. */
  readonly holds: Uint16Array | undefined
  readonly worked: Uint8Array
  readonly shownAt: number[]
  readonly necks: number[]
  weaver: Weaver | undefined
}

/** Work not begun yet, with room for about `eventsPerBead` events a bead. */
export function beginPlainWork(
  { index, holds, checkpoint }: Pick<StitchTask, 'index' | 'holds' | 'checkpoint'>,
  eventsPerBead: number,
): PlainWork {
  return {
    index,
    writer: createEventWriter(index.count * eventsPerBead + 16, index.count, checkpoint),
    holds,
    worked: new Uint8Array(index.count),
    shownAt: [],
    necks: [],
    weaver: undefined,
  }
}

/** The worked bead `rows` down and `halves` half beads to the right of a bead, or -1. */
export function workedBeside(work: PlainWork, bead: number, rows: number, halves: number): number {
  const { index, worked } = work
  const row = (index.rowOf[bead] ?? 0) + rows
  const found = findBead(index, row, (index.atOf[bead] ?? 0) + halves)
  return found >= 0 && worked[found] === 1 ? found : -1
}

/** Picks up a bead; `also` in the same pick-up as the one before. */
export function pick(work: PlainWork, bead: number, direction: number, also = false): void {
  if (also) pickUpAlso(work.writer, bead, direction)
  else pickUp(work.writer, bead, direction)
  work.worked[bead] = 1
}

/** Passes a worked bead. */
export function passOn(work: PlainWork, bead: number, direction: number, purpose = STITCH): void {
  pass(work.writer, bead, direction, purpose)
}

/** Weaves the cheapest way to a hole end that `isTarget` accepts; false when the thread cannot get there. */
export function weaveOn(
  work: PlainWork,
  hops: Hops,
  isTarget: (bead: number, edge: number) => boolean,
): boolean {
  const { writer } = work
  if (isTarget(writer.bead, writer.edge)) return true
  work.weaver ??= weaverBeside(writer, work.holds)
  const way = findWeave(work.weaver, { bead: writer.bead, edge: writer.edge }, hops, isTarget)
  if (way === undefined) return false
  for (const { bead, edge } of way) {
    if (bead === writer.bead) turnBack(work)
    passOn(work, bead, edge, WEAVE)
  }
  return true
}

/** Turns back into the bead just left: round the thread beside it, or in sight where there is none. */
function turnBack(work: PlainWork): void {
  const { bead, edge } = work.writer
  const isUpright = edge === UP || edge === DOWN
  const isHeld = [-1, 1].some((side) =>
    isUpright ? workedBeside(work, bead, 0, 2 * side) >= 0 : workedBeside(work, bead, side, 0) >= 0,
  )
  if (!isHeld) work.shownAt.push(bead)
  turn(work.writer, AROUND_EDGE, bead)
}
