import type { Checkpoint } from './checkpoint.ts'
import { FINISH, PASS, PICK_UP, TAIL } from './event-codes.ts'
import type { EventList } from './event-list.ts'
import {
  addThread,
  copyEvent,
  createEventWriter,
  cut,
  type EventWriter,
  finishEvents,
  knot,
  pass,
  takeTail,
} from './event-writer.ts'
import type { HoleEnd, Hops } from './find-weave.ts'
import { FINISH_BEADS, KNOT_AFTER, weaveEndIn, weaveStartIn } from './thread-ends.ts'

/** A stitched route that still wants its thread: where lengths change, and where its thread can travel. */
export type UnfinishedRoute = Readonly<{
  events: EventList
  beads: number
  hops: Hops
  /** Passes each bead's hole holds; endless without. */
  holds?: Uint16Array
  checkpoint?: Checkpoint
  /** Events before which a new length begins. */
  changes: readonly number[]
  /** False when the thread goes on into strands that hang from the part: its end is woven in there. */
  endsHere: boolean
}>

type Finishing = {
  readonly writer: EventWriter
  readonly route: UnfinishedRoute
  readonly passes: Uint16Array
  readonly worked: Uint8Array
}

/**
 * The whole route from the first length's cut to the last end's: thread added and joined, ends woven
 * in through beads with the fewest passes, half hitches, and what is left cut off.
 *
 * The amounts of `add-thread` and `cut` are 0 here; `measureLengths` fills them in.
 */
export function finishRoute(route: UnfinishedRoute): EventList {
  const { events, beads, changes, checkpoint } = route
  const room = events.count + 40 * (changes.length + 1)
  const writer = createEventWriter(room, beads, checkpoint)
  const finishing = { writer, route, passes: new Uint16Array(beads), worked: new Uint8Array(beads) }
  if (events.poolCount === 0) return finishEvents(writer)
  addThread(writer, 0)
  let isOnTail = false
  let change = 0
  for (let index = 0; index < events.count; index += 1) {
    if (changes[change] === index) {
      changeThread(finishing)
      change += 1
    }
    if (events.kind[index] === TAIL) {
      if (route.endsHere) weaveEnd(finishing)
      isOnTail = true
    }
    copyOne(finishing, index)
  }
  if (isOnTail || route.endsHere) weaveEnd(finishing)
  if (!isOnTail) finishStartTail(finishing)
  return finishEvents(writer)
}

function finishStartTail(finishing: Finishing): void {
  const { events } = finishing.route
  takeTail(finishing.writer, events.pool[0] ?? 0, (events.poolDirection[0] ?? 0) ^ 1)
  weaveEnd(finishing)
}

function changeThread(finishing: Finishing): void {
  const { writer } = finishing
  const from = { bead: writer.bead, edge: writer.edge }
  weaveEnd(finishing)
  addThread(writer, 0)
  for (const end of weaveStartIn({ ...endTask(finishing, from) })) passFinishing(finishing, end)
}

function weaveEnd(finishing: Finishing): void {
  const { writer } = finishing
  const from = { bead: writer.bead, edge: writer.edge }
  weaveEndIn(endTask(finishing, from)).forEach((end, at) => {
    passFinishing(finishing, end)
    if (KNOT_AFTER.includes(at + 1)) knot(writer, end.bead)
  })
  cut(writer, 0)
}

function endTask({ route, passes, worked }: Finishing, from: HoleEnd) {
  const isWorked = (bead: number) => worked[bead] === 1
  const { hops, holds } = route
  return { from, hops, passes, holds, isWorked, beads: FINISH_BEADS }
}

function passFinishing({ writer, passes }: Finishing, { bead, edge }: HoleEnd): void {
  pass(writer, bead, edge, FINISH)
  passes[bead] = (passes[bead] ?? 0) + 1
}

function copyOne({ writer, route, passes, worked }: Finishing, index: number): void {
  const { events } = route
  copyEvent(writer, events, index)
  const a = events.a[index] ?? 0
  const kind = events.kind[index]
  if (kind === PASS) {
    passes[a] = (passes[a] ?? 0) + 1
    leave(writer, a, (events.code[index] ?? 0) & 3)
  } else if (kind === TAIL) {
    leave(writer, a, events.code[index] ?? 0)
  } else if (kind === PICK_UP) {
    const end = a + (events.b[index] ?? 0)
    for (let at = a; at < end; at += 1) {
      const bead = events.pool[at] ?? 0
      passes[bead] = (passes[bead] ?? 0) + 1
      worked[bead] = 1
      leave(writer, bead, events.poolDirection[at] ?? 0)
    }
  }
}

function leave(writer: EventWriter, bead: number, edge: number): void {
  writer.bead = bead
  writer.edge = edge
}
