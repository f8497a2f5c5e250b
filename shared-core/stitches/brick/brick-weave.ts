import { WEAVE } from '../../route/event-codes.ts'
import { hook } from '../../route/event-writer.ts'
import { findWeave } from '../../route/find-weave.ts'
import { weaverBeside } from '../../route/weaver-beside.ts'
import { brickHops } from './brick-hops.ts'
import { type BrickWork, isBridged, passBead, workedBead } from './brick-work.ts'

/** Weaves the cheapest way to a hole end that `isTarget` accepts; false when the thread cannot get there. */
export function weaveTo(
  work: BrickWork,
  isTarget: (bead: number, edge: number) => boolean,
): boolean {
  const { writer } = work
  if (isTarget(writer.bead, writer.edge)) return true
  work.weaver ??= weaverBeside(writer, work.holds)
  const from = { bead: writer.bead, edge: writer.edge }
  const way = findWeave(work.weaver, from, brickHops(work), isTarget)
  if (way === undefined) return false
  for (const { bead, edge } of way) {
    if (bead === writer.bead) hookBeside(work)
    else if (isInSight(work, bead, edge)) work.shownAt.push(bead)
    passBead(work, bead, edge, WEAVE)
  }
  return true
}

/** Entering another row's bead at the end on the same side as the thread left means running along its side. */
function isInSight({ index, writer }: BrickWork, bead: number, edge: number): boolean {
  return index.rowOf[bead] !== index.rowOf[writer.bead] && writer.edge === (edge ^ 1)
}

/** Goes under a bridge beside the hole end the thread leaves, to turn back into the same bead. */
function hookBeside(work: BrickWork): void {
  const { bead, edge } = work.writer
  const behind = workedBead(work, bead, 0, -2 * work.along)
  const ahead = workedBead(work, bead, 0, 2 * work.along)
  const left = [behind, ahead]
    .filter((other) => other >= 0)
    .map((other) => Math.min(other, bead))
    .find((other) => isBridged(work, other, edge))
  if (left !== undefined) hook(work.writer, left, left + 1, edge)
}
