import { assert } from '../assert.ts'
import {
  ADD_THREAD,
  CUT,
  DIRECTIONS,
  FINDING,
  HOOK,
  JOIN,
  KNOT,
  PASS,
  PICK_UP,
  PURPOSES,
  RIGHT,
  ROW,
  TAIL,
  TURN,
  TURNS,
  WARP,
} from './event-codes.ts'
import type { Direction, RouteEvent } from './route.ts'

/**
 * A route in compact form: ten bytes an event and five a bead, so that a million beads stay workable.
 *
 * Event `i` has a kind code, two numbers and a small code whose meaning depends on the kind. A
 * pick-up's beads stand in `pool` from `a[i]`, `b[i]` of them, in working order, with their directions.
 */
export type EventList = Readonly<{
  count: number
  kind: Uint8Array
  a: Int32Array
  b: Int32Array
  code: Uint8Array
  poolCount: number
  pool: Int32Array
  poolDirection: Uint8Array
  texts: readonly string[]
}>

/** Event `index` as the object the screens read. @throws for an index outside the list. */
export function eventAt(list: EventList, index: number): RouteEvent {
  assert(index >= 0 && index < list.count, `an event index below ${list.count}, got ${index}`)
  const kind = list.kind[index]
  const a = list.a[index] ?? 0
  const b = list.b[index] ?? 0
  const code = list.code[index] ?? 0
  if (kind === PICK_UP) return pickUpAt(list, a, b)
  if (kind === PASS) {
    const purpose = PURPOSES[code >> 2] ?? 'stitch'
    return { kind: 'pass', bead: a, direction: direction(code & 3), purpose }
  }
  if (kind === HOOK) return { kind: 'hook', bridge: { a, b }, edge: direction(code) }
  if (kind === TURN) return { kind: 'turn', around: TURNS[code] ?? 'edge', bead: a }
  if (kind === JOIN) {
    const purpose = PURPOSES[code >> 2] ?? 'stitch'
    const partId = list.texts[b] ?? ''
    return { kind: 'join', partId, bead: a, direction: direction(code & 3), purpose }
  }
  if (kind === TAIL) return { kind: 'tail', bead: a, edge: direction(code) }
  if (kind === ROW) return { kind: 'row', row: a, side: code === RIGHT ? 'right' : 'left' }
  if (kind === FINDING) return { kind: 'finding', findingId: list.texts[a] ?? '' }
  if (kind === KNOT) return { kind: 'knot', near: a }
  if (kind === WARP) return { kind: 'warp', lengthMm: a, inPieceMm: b }
  if (kind === ADD_THREAD) return { kind: 'add-thread', lengthMm: a }
  assert(kind === CUT, `a known event kind, got ${kind}`)
  return { kind: 'cut', tailMm: a }
}

function direction(code: number): Direction {
  return DIRECTIONS[code] ?? 'up'
}

function pickUpAt(list: EventList, from: number, count: number): RouteEvent {
  return {
    kind: 'pick-up',
    beads: Array.from(list.pool.subarray(from, from + count)),
    directions: Array.from(list.poolDirection.subarray(from, from + count), direction),
  }
}

/** All events as objects, in order. */
export function toEvents(list: EventList): readonly RouteEvent[] {
  return Array.from({ length: list.count }, (_, index) => eventAt(list, index))
}

/** A route without events. */
export const emptyRoute: EventList = {
  count: 0,
  kind: new Uint8Array(0),
  a: new Int32Array(0),
  b: new Int32Array(0),
  code: new Uint8Array(0),
  poolCount: 0,
  pool: new Int32Array(0),
  poolDirection: new Uint8Array(0),
  texts: [],
}
