import FlatQueue from 'flatqueue'
import { type Checkpoint, neverStops } from './checkpoint.ts'

/**
 * Where a thread can go from a hole end without being seen: calls `visit` for each hole end it may
 * enter next, with the cost in mm of getting there and through that bead.
 */
export type Hops = (
  bead: number,
  edge: number,
  visit: (toBead: number, exitEdge: number, costMm: number) => void,
) => void

/** A hole end the thread leaves the work at. Edges are direction codes. */
export type HoleEnd = Readonly<{ bead: number; edge: number }>

/** Working memory of the search, kept between searches of one part so that each costs only what it visits. */
export type Weaver = {
  readonly costMm: Float64Array
  readonly cameFrom: Int32Array
  readonly stamp: Uint32Array
  readonly queue: FlatQueue
  readonly isFull: (bead: number) => boolean
  readonly checkpoint: Checkpoint
  round: number
}

/** What a search looks out for: holes no further pass goes through, and whether it is still wanted. */
export type WeaveCare = Readonly<{ isFull?: (bead: number) => boolean; checkpoint?: Checkpoint }>

/**
 * Cost of a pass through a hole that is full, mm: more than running in sight, because such a pass is
 * forced or breaks the bead. Chosen by us; taken only where there is no other way within reach.
 */
export const FULL_MM = 200

/** Hole ends looked at between two looks at whether the search is still wanted: a power of two. */
const ENDS_A_LOOK = 4_096

/** Memory for searches in a part of `beads` beads: 32 bytes a bead. */
export function createWeaver(
  beads: number,
  { isFull = () => false, checkpoint = neverStops }: WeaveCare = {},
): Weaver {
  return {
    costMm: new Float64Array(beads * 2),
    cameFrom: new Int32Array(beads * 2),
    stamp: new Uint32Array(beads * 2),
    queue: new FlatQueue(),
    isFull,
    checkpoint,
    round: 0,
  }
}

/**
 * The cheapest way from one hole end to another: the passes to make, in order, or `undefined` when
 * the thread cannot get there. Empty when it is there already.
 *
 * Dijkstra over hole ends; every step goes through a bead, so the thread never turns back in a hole.
 * Beads whose holes are full are gone round where there is a way.
 *
 * @param isTarget - Whether leaving `bead` at `edge` is a place to stop.
 */
export function findWeave(
  weaver: Weaver,
  from: HoleEnd,
  hops: Hops,
  isTarget: (bead: number, edge: number) => boolean,
): readonly HoleEnd[] | undefined {
  if (isTarget(from.bead, from.edge)) return []
  const { queue, costMm, stamp, cameFrom, isFull } = weaver
  weaver.round += 1
  queue.clear()
  const start = key(from.bead, from.edge)
  costMm[start] = 0
  stamp[start] = weaver.round
  cameFrom[start] = -1
  // Edges come in opposite pairs, so the pair (up and down, or left and right) is fixed by the bead.
  queue.push(from.bead * 4 + from.edge, 0)
  let looked = 0
  for (let state = queue.pop(); state !== undefined; state = queue.pop()) {
    looked += 1
    if (looked % ENDS_A_LOOK === 0) weaver.checkpoint()
    const bead = state >> 2
    const edge = state & 3
    const here = key(bead, edge)
    if (isTarget(bead, edge)) return trace(weaver, state, from)
    const soFar = costMm[here] ?? 0
    hops(bead, edge, (toBead, exitEdge, hopMm) => {
      const there = key(toBead, exitEdge)
      const cost = soFar + hopMm + (isFull(toBead) ? FULL_MM : 0)
      if (stamp[there] === weaver.round && (costMm[there] ?? 0) <= cost) return
      stamp[there] = weaver.round
      costMm[there] = cost
      cameFrom[there] = state
      queue.push(toBead * 4 + exitEdge, cost)
    })
  }
  return undefined
}

function key(bead: number, edge: number): number {
  return bead * 2 + (edge & 1)
}

function trace(weaver: Weaver, target: number, from: HoleEnd): readonly HoleEnd[] {
  const passes: HoleEnd[] = []
  for (let state = target; state >= 0; ) {
    const end = { bead: state >> 2, edge: state & 3 }
    if (end.bead === from.bead && end.edge === from.edge) break
    passes.push(end)
    state = weaver.cameFrom[key(end.bead, end.edge)] ?? -1
  }
  return passes.reverse()
}
