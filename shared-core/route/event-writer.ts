import { type Checkpoint, neverStops } from './checkpoint.ts'
import {
  ADD_THREAD,
  CUT,
  FINDING,
  HOOK,
  JOIN,
  KNOT,
  PASS,
  PICK_UP,
  ROW,
  TAIL,
  TURN,
  WARP,
} from './event-codes.ts'
import type { EventList } from './event-list.ts'

/**
 * A route being written. `bead` and `edge` say where the thread leaves the work just now
 * (`bead` is -1 before the first bead); the arrays grow as needed.
 */
export type EventWriter = {
  count: number
  kind: Uint8Array
  a: Int32Array
  b: Int32Array
  code: Uint8Array
  poolCount: number
  pool: Int32Array
  poolDirection: Uint8Array
  texts: string[]
  bead: number
  edge: number
  /** Passes of each bead so far, while the writer knows how many beads there are. */
  readonly passes: Uint16Array
  readonly checkpoint: Checkpoint
}

/** Events written between two looks at whether the work is still wanted: a power of two. */
const EVENTS_A_LOOK = 16_384

/**
 * An empty route with room for `events` events and `beads` beads before its arrays must grow.
 *
 * @param checkpoint - Called now and then; throws when the route is no longer wanted.
 */
export function createEventWriter(
  events: number,
  beads: number,
  checkpoint: Checkpoint = neverStops,
): EventWriter {
  const room = Math.max(16, events)
  const poolRoom = Math.max(4, beads)
  return {
    count: 0,
    kind: new Uint8Array(room),
    a: new Int32Array(room),
    b: new Int32Array(room),
    code: new Uint8Array(room),
    poolCount: 0,
    pool: new Int32Array(poolRoom),
    poolDirection: new Uint8Array(poolRoom),
    texts: [],
    bead: -1,
    edge: 0,
    passes: new Uint16Array(beads),
    checkpoint,
  }
}

/** The finished route; the writer must not be used after. */
export function finishEvents(writer: EventWriter): EventList {
  const { count, kind, a, b, code, poolCount, pool, poolDirection, texts } = writer
  return { count, kind, a, b, code, poolCount, pool, poolDirection, texts }
}

function write(writer: EventWriter, kind: number, a: number, b: number, code: number): void {
  if (writer.count === writer.kind.length) growEvents(writer)
  const at = writer.count
  if (at % EVENTS_A_LOOK === 0) writer.checkpoint()
  writer.kind[at] = kind
  writer.a[at] = a
  writer.b[at] = b
  writer.code[at] = code
  writer.count = at + 1
}

function growEvents(writer: EventWriter): void {
  const room = writer.kind.length * 2
  const kind = new Uint8Array(room)
  kind.set(writer.kind)
  const a = new Int32Array(room)
  a.set(writer.a)
  const b = new Int32Array(room)
  b.set(writer.b)
  const code = new Uint8Array(room)
  code.set(writer.code)
  Object.assign(writer, { kind, a, b, code })
}

function pushPool(writer: EventWriter, bead: number, direction: number): void {
  if (writer.poolCount === writer.pool.length) {
    const pool = new Int32Array(writer.poolCount * 2)
    pool.set(writer.pool)
    const poolDirection = new Uint8Array(writer.poolCount * 2)
    poolDirection.set(writer.poolDirection)
    writer.pool = pool
    writer.poolDirection = poolDirection
  }
  writer.pool[writer.poolCount] = bead
  writer.poolDirection[writer.poolCount] = direction
  writer.poolCount += 1
  countPass(writer, bead)
}

function countPass({ passes }: EventWriter, bead: number): void {
  passes[bead] = (passes[bead] ?? 0) + 1
}

/** Picks up one bead, strung in `direction`. */
export function pickUp(writer: EventWriter, bead: number, direction: number): void {
  write(writer, PICK_UP, writer.poolCount, 1, 0)
  pushPool(writer, bead, direction)
  writer.bead = bead
  writer.edge = direction
}

/** Strings one more bead in the pick-up just written. */
export function pickUpAlso(writer: EventWriter, bead: number, direction: number): void {
  writer.b[writer.count - 1] = (writer.b[writer.count - 1] ?? 0) + 1
  pushPool(writer, bead, direction)
  writer.bead = bead
  writer.edge = direction
}

/** Passes through a bead that is already in the work. */
export function pass(writer: EventWriter, bead: number, direction: number, purpose: number): void {
  write(writer, PASS, bead, 0, direction | (purpose << 2))
  countPass(writer, bead)
  writer.bead = bead
  writer.edge = direction
}

/** Goes under the bridge between `a` and `b` on their `edge` side; the thread comes back to the same bead. */
export function hook(writer: EventWriter, a: number, b: number, edge: number): void {
  write(writer, HOOK, a, b, edge)
}

/** Turns round a bead, an edge thread or a warp (`around`), by the bead the thread leaves. */
export function turn(writer: EventWriter, around: number, bead: number): void {
  write(writer, TURN, bead, 0, around)
}

/** Passes bead `bead` of another part. The thread then leaves this part's own beads. */
export function join(
  writer: EventWriter,
  partId: string,
  { bead, edge }: Readonly<{ bead: number; edge: number }>,
  purpose: number,
): void {
  write(writer, JOIN, bead, textIndex(writer, partId), edge | (purpose << 2))
}

/** Moves the needle to the start tail, which leaves `bead` on its `edge` side. */
export function takeTail(writer: EventWriter, bead: number, edge: number): void {
  write(writer, TAIL, bead, 0, edge)
  writer.bead = bead
  writer.edge = edge
}

/** Begins a row at a side (the code of left or right). */
export function beginRow(writer: EventWriter, row: number, side: number): void {
  write(writer, ROW, row, 0, side)
}

/** Goes through a finding. */
export function carryFinding(writer: EventWriter, findingId: string): void {
  write(writer, FINDING, textIndex(writer, findingId), 0, 0)
}

/** Ties a half hitch beside a bead. */
export function knot(writer: EventWriter, near: number): void {
  write(writer, KNOT, near, 0, 0)
}

/** Begins a new length of thread, whole mm. */
export function addThread(writer: EventWriter, lengthMm: number): void {
  write(writer, ADD_THREAD, lengthMm, 0, 0)
}

/** Cuts off the end in hand; `tailMm` is what falls away, whole mm. */
export function cut(writer: EventWriter, tailMm: number): void {
  write(writer, CUT, tailMm, 0, 0)
}

/** Hangs one warp: its length as cut and what of it stays in the work, whole mm. */
export function hangWarp(writer: EventWriter, lengthMm: number, inPieceMm: number): void {
  write(writer, WARP, lengthMm, inPieceMm, 0)
}

/** Copies event `index` of a finished route. */
export function copyEvent(writer: EventWriter, list: EventList, index: number): void {
  const kind = list.kind[index] ?? 0
  const a = list.a[index] ?? 0
  const b = list.b[index] ?? 0
  const code = list.code[index] ?? 0
  if (kind === PICK_UP) {
    write(writer, PICK_UP, writer.poolCount, b, code)
    for (let at = a; at < a + b; at += 1) {
      pushPool(writer, list.pool[at] ?? 0, list.poolDirection[at] ?? 0)
    }
    return
  }
  if (kind === JOIN) write(writer, kind, a, textIndex(writer, list.texts[b] ?? ''), code)
  else if (kind === FINDING) write(writer, kind, textIndex(writer, list.texts[a] ?? ''), b, code)
  else write(writer, kind, a, b, code)
}

function textIndex(writer: EventWriter, text: string): number {
  const known = writer.texts.indexOf(text)
  if (known >= 0) return known
  writer.texts.push(text)
  return writer.texts.length - 1
}
