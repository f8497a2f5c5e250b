import type { BeadIndex } from '../chart/bead-index.ts'
import { HOOK, JOIN, KNOT, LEFT, PASS, ROW, TAIL, TURN } from './event-codes.ts'
import type { EventList } from './event-list.ts'

/** Where a bead lies in the image. */
export type MirrorBead = (bead: number) => number

/** The image's bead for each bead of a panel: its rows read from the other end. Twice gives the bead again. */
export function mirrorBeads({ rowOf, rowStart }: BeadIndex): MirrorBead {
  return (bead) => {
    const row = rowOf[bead] ?? 0
    return (rowStart[row] ?? 0) + (rowStart[row + 1] ?? 0) - 1 - bead
  }
}

/**
 * A route as it is seen in a mirror that stands upright beside the work: left and right change, up
 * and down stay, and so do the order of work and every length.
 *
 * @param own - Image of the part's own beads.
 * @param joined - Image of the beads of the part that is joined.
 */
export function mirrorRoute(events: EventList, own: MirrorBead, joined: MirrorBead): EventList {
  const a = events.a.slice(0, events.count)
  const b = events.b.slice(0, events.count)
  const code = events.code.slice(0, events.count)
  for (let index = 0; index < events.count; index += 1) {
    const [at, also, sides] = [a[index] ?? 0, b[index] ?? 0, code[index] ?? 0]
    const kind = events.kind[index]
    if (kind === HOOK) {
      a[index] = own(also)
      b[index] = own(at)
    } else if (kind === JOIN) a[index] = joined(at)
    else if (kind === PASS || kind === TAIL || kind === TURN || kind === KNOT) a[index] = own(at)
    const hasDirection = kind === PASS || kind === JOIN || kind === HOOK
    if (hasDirection || kind === TAIL || kind === ROW) code[index] = otherSide(sides)
  }
  return {
    ...events,
    a,
    b,
    code,
    pool: events.pool.slice(0, events.poolCount).map(own),
    poolDirection: events.poolDirection.slice(0, events.poolCount).map(otherSide),
  }
}

/** The same code with left and right changed in its direction, its two lowest bits. */
function otherSide(code: number): number {
  return (code & 3) >= LEFT ? code ^ 1 : code
}
