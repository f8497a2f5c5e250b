import type { BeadIndex } from '../../chart/bead-index.ts'
import { LEFT, RIGHT } from '../../route/event-codes.ts'
import type { HoleEnd, Hops } from '../../route/find-weave.ts'
import { FINISH_BEADS, weaveEndIn } from '../../route/thread-ends.ts'

/** Loom work off the loom: its beads, where a thread can travel, and the weft's passes. */
export type WovenPanel = Readonly<{
  index: BeadIndex
  hops: Hops
  /** Passes of the weft through each bead. */
  passes: Uint16Array
  /** Passes each bead's hole holds. */
  holds: Uint16Array
}>

/**
 * Passes the warp ends add to each bead: every warp's two ends are woven in like any other end,
 * `FINISH_BEADS` beads each, from the bead beside the warp at the top and at the bottom of the work.
 *
 * Ends go where there is room: to the side and into the beads with the fewest passes, and never into a
 * full hole where another lies beside it.
 */
export function warpEndPasses({ index, hops, passes: weft, holds }: WovenPanel): Uint16Array {
  const passes = weft.slice()
  const isWorked = () => true
  const wayFrom = (from: HoleEnd) =>
    weaveEndIn({ from, hops, passes, holds, isWorked, beads: FINISH_BEADS })
  const crowd = (way: readonly HoleEnd[]) =>
    way.reduce((sum, { bead }) => sum + (passes[bead] ?? 0), 0)
  for (const sides of warpEnds(index)) {
    const [way = []] = sides
      .map(wayFrom)
      .toSorted((a, b) => b.length - a.length || crowd(a) - crowd(b))
    for (const { bead } of way) passes[bead] = (passes[bead] ?? 0) + 1
  }
  return passes.map((all, bead) => all - (weft[bead] ?? 0))
}

/** Each warp's ends, at the top and at the bottom: the hole ends of the outermost beads beside it, from which it can go either way. */
function warpEnds({ count, rowOf, atOf }: BeadIndex): readonly (readonly HoleEnd[])[] {
  const top = new Map<number, number>()
  const bottom = new Map<number, number>()
  let least = Number.POSITIVE_INFINITY
  let most = Number.NEGATIVE_INFINITY
  for (let bead = 0; bead < count; bead += 1) {
    const column = (atOf[bead] ?? 0) >> 1
    if (!top.has(column)) top.set(column, bead)
    bottom.set(column, bead)
    least = Math.min(least, column)
    most = Math.max(most, column)
  }
  const ends: (readonly HoleEnd[])[] = []
  for (let warp = least; warp <= most + 1; warp += 1) {
    ends.push(outermost(top, warp, (bead) => rowOf[bead] ?? 0))
    ends.push(outermost(bottom, warp, (bead) => -(rowOf[bead] ?? 0)))
  }
  return ends
}

/** The beads beside a warp that lie farthest out, each by the end of its hole that faces the warp. */
function outermost(
  beadOf: ReadonlyMap<number, number>,
  warp: number,
  depth: (bead: number) => number,
): readonly HoleEnd[] {
  const right = beadOf.get(warp)
  const left = beadOf.get(warp - 1)
  const toLeft = right === undefined ? [] : [{ bead: right, edge: LEFT }]
  const toRight = left === undefined ? [] : [{ bead: left, edge: RIGHT }]
  if (right === undefined || left === undefined) return [...toLeft, ...toRight]
  const apart = depth(right) - depth(left)
  if (apart === 0) return [...toRight, ...toLeft]
  return apart < 0 ? toLeft : toRight
}
