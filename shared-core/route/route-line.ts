import {
  ADD_THREAD,
  AROUND_BEAD,
  FINDING,
  HOOK,
  JOIN,
  PASS,
  PICK_UP,
  TAIL,
  TURN,
} from './event-codes.ts'
import type { EventList } from './event-list.ts'
import { holeEndX, holeEndY, type PartGeometry } from './part-geometry.ts'

/** How the thread comes to a point: it begins there. */
export const BEGINS = 0
/** It comes through a bead's hole. */
export const THROUGH = 1
/** It runs straight from the point before, as `measureThread` measures it. */
export const RUNS = 2
/** It bends round a turn bead or a finding, or goes over to another part: not a measured run. */
export const BENDS = 3

/**
 * The thread's journey as a line that can be drawn, played and scrubbed.
 *
 * Arrays over points, in mm, y down, in the space of the part's geometry. `comesBy` is one of
 * `BEGINS`, `THROUGH`, `RUNS`, `BENDS`. `eventOf` is the event that lays the thread up to the point.
 * `passOf` counts the times the thread was in that bead before, for the two points of a pass, so
 * that passes can be drawn side by side; 0 elsewhere. `upTo[e]` is the number of points laid by the
 * end of event `e`.
 */
export type RouteLine = Readonly<{
  count: number
  xMm: Float32Array
  yMm: Float32Array
  comesBy: Uint8Array
  eventOf: Int32Array
  passOf: Uint16Array
  upTo: Int32Array
}>

/** Where the ends of beads' holes lie: `edge` is a direction code. */
export type HoleEnds = Readonly<{
  xMm: (bead: number, edge: number) => number
  yMm: (bead: number, edge: number) => number
}>

/** Where a line is drawn when not in the part's own geometry. */
export type LinePlaces = Readonly<{
  /** The part's own beads: a loop is drawn as an arc, though it is measured straight. */
  own?: HoleEnds
  /** The beads of the part it joins; without them the line breaks at each join. */
  joined?: HoleEnds
}>

/**
 * Lays a route out as a line.
 *
 * The points are those between which `measureThread` measures: both hole ends of each pass and the
 * middle of each bridge that is hooked. So the lengths of all `THROUGH` stretches of a panel sum to
 * its `throughMm`, those of all `RUNS` stretches to its `runMm` before the play of holes is taken off.
 * The line begins anew where a length of thread begins and where the needle takes up the start tail.
 *
 * @returns One point for each hook and tail, two for each pass; 21 bytes a point and four an event.
 */
export function routeLine(
  events: EventList,
  geometry: PartGeometry,
  { own = endsOf(geometry), joined }: LinePlaces = {},
): RouteLine {
  const room = countPoints(events, joined !== undefined)
  const line: Drawing = {
    count: 0,
    xMm: new Float32Array(room),
    yMm: new Float32Array(room),
    comesBy: new Uint8Array(room),
    eventOf: new Int32Array(room),
    passOf: new Uint16Array(room),
    upTo: new Int32Array(events.count),
    event: 0,
    next: BEGINS,
    own,
    joined,
    strung: geometry.strung,
    passes: new Uint16Array(geometry.count),
  }
  for (let index = 0; index < events.count; index += 1) {
    line.event = index
    drawEvent(line, events, index)
    line.upTo[index] = line.count
  }
  const { count, xMm, yMm, comesBy, eventOf, passOf, upTo } = line
  return { count, xMm, yMm, comesBy, eventOf, passOf, upTo }
}

/** The hole ends of a part where its own geometry has them. */
export function endsOf(geometry: PartGeometry): HoleEnds {
  return {
    xMm: (bead, edge) => holeEndX(geometry, bead, edge),
    yMm: (bead, edge) => holeEndY(geometry, bead, edge),
  }
}

/** Length of the line's stretches of one kind, mm. */
export function lineLength(line: RouteLine, comesBy: number): number {
  let mm = 0
  for (let at = 1; at < line.count; at += 1) {
    if (line.comesBy[at] === comesBy) mm += stretchMm(line, at)
  }
  return mm
}

/** Length from the point before to point `at`, mm. */
export function stretchMm({ xMm, yMm }: RouteLine, at: number): number {
  const dx = (xMm[at] ?? 0) - (xMm[at - 1] ?? 0)
  const dy = (yMm[at] ?? 0) - (yMm[at - 1] ?? 0)
  return Math.sqrt(dx * dx + dy * dy)
}

/** A line being drawn; `next` is how the thread comes to the next point outside a hole. */
type Drawing = {
  count: number
  event: number
  next: number
  readonly passes: Uint16Array
  readonly strung: boolean
  readonly own: HoleEnds
  readonly joined: HoleEnds | undefined
} & Omit<RouteLine, 'count'>

function countPoints({ kind, count, poolCount }: EventList, drawsJoins: boolean): number {
  let points = 2 * poolCount
  for (let index = 0; index < count; index += 1) {
    const one = kind[index]
    if (one === PASS || (one === JOIN && drawsJoins)) points += 2
    else if (one === HOOK || one === TAIL) points += 1
  }
  return points
}

function drawEvent(line: Drawing, events: EventList, index: number): void {
  const a = events.a[index] ?? 0
  const code = events.code[index] ?? 0
  switch (events.kind[index]) {
    case PICK_UP: {
      const end = a + (events.b[index] ?? 0)
      for (let at = a; at < end; at += 1) {
        drawPass(line, events.pool[at] ?? 0, events.poolDirection[at] ?? 0)
      }
      return
    }
    case PASS:
      drawPass(line, a, code & 3)
      return
    case HOOK:
      drawHook(line, a, events.b[index] ?? 0, code)
      return
    case TAIL:
      line.next = BEGINS
      addPoint(line, line.own.xMm(a, code), line.own.yMm(a, code), 0)
      line.next = line.strung ? BENDS : RUNS
      return
    case JOIN:
      drawJoin(line, a, code & 3)
      return
    case TURN:
      if (code === AROUND_BEAD && line.next !== BEGINS) line.next = BENDS
      return
    case FINDING:
      if (line.next !== BEGINS) line.next = BENDS
      return
    case ADD_THREAD:
      line.next = BEGINS
  }
}

function drawPass(line: Drawing, bead: number, direction: number): void {
  const pass = line.passes[bead] ?? 0
  line.passes[bead] = pass + 1
  drawHole(line, line.own, { bead, direction, pass })
  line.next = line.strung ? BENDS : RUNS
}

function drawJoin(line: Drawing, bead: number, direction: number): void {
  if (line.joined === undefined) {
    line.next = BEGINS
    return
  }
  if (line.next === RUNS) line.next = BENDS
  drawHole(line, line.joined, { bead, direction, pass: 0 })
  line.next = BENDS
}

function drawHole(
  line: Drawing,
  ends: HoleEnds,
  { bead, direction, pass }: Readonly<{ bead: number; direction: number; pass: number }>,
): void {
  const entry = direction ^ 1
  addPoint(line, ends.xMm(bead, entry), ends.yMm(bead, entry), pass)
  line.next = THROUGH
  addPoint(line, ends.xMm(bead, direction), ends.yMm(bead, direction), pass)
}

function drawHook(line: Drawing, a: number, b: number, edge: number): void {
  const { own } = line
  const x = (own.xMm(a, edge) + own.xMm(b, edge)) / 2
  const y = (own.yMm(a, edge) + own.yMm(b, edge)) / 2
  addPoint(line, x, y, 0)
  line.next = RUNS
}

function addPoint(line: Drawing, x: number, y: number, pass: number): void {
  const at = line.count
  line.xMm[at] = x
  line.yMm[at] = y
  line.comesBy[at] = line.next
  line.eventOf[at] = line.event
  line.passOf[at] = pass
  line.count = at + 1
}
