import { type BrickBridge, type BrickWork, isBridged, rowStep, workedBead } from './brick-work.ts'

/**
 * The bridge a bead hangs on, in the row worked before it, or `undefined` when there is none.
 *
 * The bridge right under it where there is one; else, for a bead that overhangs by half, the last
 * bridge of the beads it touches, first the one behind it in the direction of work.
 *
 * @param edge - The side the row grows on.
 * @param along - 1 when the row is worked to the right, -1 to the left.
 */
export function findHook(
  work: BrickWork,
  bead: number,
  edge: number,
  along: number,
): BrickBridge | undefined {
  const base = -rowStep(edge)
  const left = workedBead(work, bead, base, -1)
  const right = workedBead(work, bead, base, 1)
  if (left >= 0 && right >= 0 && isBridged(work, left, edge)) return { a: left, b: right }
  const beyondLeft = () => bridgeFrom(work, workedBead(work, bead, base, -3), left, edge)
  const beyondRight = () => bridgeFrom(work, right, workedBead(work, bead, base, 3), edge)
  return along > 0 ? (beyondLeft() ?? beyondRight()) : (beyondRight() ?? beyondLeft())
}

/** A worked bead the given bead touches in the row before it, or -1: the nearer one to the start of the row first. */
export function findTouched(work: BrickWork, bead: number, edge: number, along: number): number {
  const base = -rowStep(edge)
  const behind = workedBead(work, bead, base, -along)
  return behind >= 0 ? behind : workedBead(work, bead, base, along)
}

function bridgeFrom(work: BrickWork, a: number, b: number, edge: number): BrickBridge | undefined {
  return a >= 0 && b >= 0 && isBridged(work, a, edge) ? { a, b } : undefined
}
