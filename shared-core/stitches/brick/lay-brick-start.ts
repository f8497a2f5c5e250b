import { pickUp, takeTail } from '../../route/event-writer.ts'
import { type BrickWork, passBead, pickOne, pickTwo } from './brick-work.ts'

/** The beads of a start row in the order they are worked, and the side the next row grows on. */
export type StartRow = Readonly<{ beads: readonly number[]; outward: number; ladder: boolean }>

/**
 * Lays the start row and leaves the thread at its `outward` side; returns the side the start tail leaves by.
 *
 * Two beads side by side: both strung, the first passed again, so that they sit side by side and the
 * thread leaves the first. Ladder: each new bead is strung, the one before passed again, then the new
 * one; the first bead's direction is chosen so that the last is left on the outward side.
 */
export function layBrickStart(work: BrickWork, { beads, outward, ladder }: StartRow): number {
  const [first, second] = beads
  if (first === undefined) return outward ^ 1
  if (second === undefined) {
    pickOne(work, first, outward)
    return outward ^ 1
  }
  if (!ladder) {
    pickTwo(work, first, second, outward)
    passBead(work, first, outward)
    return outward ^ 1
  }
  const begin = beads.length % 2 === 1 ? outward : outward ^ 1
  pickTwo(work, first, second, begin)
  passBead(work, first, begin)
  passBead(work, second, begin ^ 1)
  for (let at = 2; at < beads.length; at += 1) ladderOn(work, beads[at] ?? -1)
  return begin ^ 1
}

/** Adds a bead beside the one the thread leaves: string it, pass the one before again, then the new one again. */
export function ladderOn(work: BrickWork, bead: number): void {
  const { bead: before, edge } = work.writer
  pickOne(work, bead, edge ^ 1)
  passBead(work, before, edge)
  passBead(work, bead, edge ^ 1)
}

/**
 * Adds a single tip bead on the tail's side of a two-bead start: the tail leaves the first bead, runs
 * through the tip, which lies across, and on through the second bead.
 */
export function layTailTip(
  work: BrickWork,
  { tip, first, second, outward, across }: TailTip,
): void {
  takeTail(work.writer, first, outward)
  pickUp(work.writer, tip, across)
  work.worked[tip] = 2
  passBead(work, second, outward ^ 1)
}

/** `outward` is the side the tip lies on, `across` the direction from the first bead to the second. */
export type TailTip = Readonly<{
  tip: number
  first: number
  second: number
  outward: number
  across: number
}>
