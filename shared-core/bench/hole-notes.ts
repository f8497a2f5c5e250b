import { JOIN, PASS, PICK_UP } from '../route/event-codes.ts'
import type { EventList } from '../route/event-list.ts'
import type { HoleNote } from './reader-script.ts'

/** The holes of one part while its passes are counted up. */
export type HoleTally = Readonly<{ partId: string; holds: Uint16Array; passes: Uint16Array }>

/** A note with the event it falls on. */
export type HoleEvent = Omit<HoleNote, 'step'> & Readonly<{ event: number }>

/** An empty tally for beads that hold so many passes each. */
export function holeTally(partId: string, holds: Uint16Array): HoleTally {
  return { partId, holds, passes: new Uint16Array(holds.length) }
}

/**
 * Counts a route's passes on, and gives the pass that fills each hole and the first that sticks, in
 * order of work.
 *
 * @param own - The part's own holes.
 * @param joined - The holes of the panel it hangs from, for a strand.
 * @param drawnBead - The bead as drawn, for a bead of the panel or strand in the route.
 */
export function holeEvents(
  route: EventList,
  own: Readonly<{ tally: HoleTally; drawnBead: (bead: number) => number }>,
  joined: Readonly<{ tally: HoleTally; drawnBead: (bead: number) => number }> | undefined,
): readonly HoleEvent[] {
  const notes: HoleEvent[] = []
  const pass = ({ tally, drawnBead }: typeof own, routeBead: number, event: number) => {
    const { partId, holds: capacity, passes } = tally
    const bead = drawnBead(routeBead)
    const count = (passes[bead] ?? 0) + 1
    passes[bead] = count
    const holds = capacity[bead] ?? 0
    if (count === holds) notes.push({ event, bead, kind: 'fills', holds, partId })
    if (count === holds + 1) notes.push({ event, bead, kind: 'sticks', holds, partId })
  }
  for (let event = 0; event < route.count; event += 1) {
    const from = route.a[event] ?? 0
    if (route.kind[event] === PASS) pass(own, from, event)
    if (route.kind[event] === JOIN && joined !== undefined) pass(joined, from, event)
    if (route.kind[event] !== PICK_UP) continue
    const picked = route.pool.subarray(from, from + (route.b[event] ?? 0))
    for (const bead of picked) pass(own, bead, event)
  }
  return notes
}
