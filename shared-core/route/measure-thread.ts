import { type Checkpoint, neverStops } from './checkpoint.ts'
import {
  ADD_THREAD,
  AROUND_BEAD,
  FINDING,
  HOOK,
  JOIN,
  KNOT,
  PASS,
  PICK_UP,
  TAIL,
  TURN,
} from './event-codes.ts'
import type { EventList } from './event-list.ts'
import { holeEndX, holeEndY, type PartGeometry } from './part-geometry.ts'

/** Wire of a usual ring or ear wire, mm: the thread bends half way round it. */
const FINDING_WIRE_MM = 0.8

/** Events measured between two looks at whether the measure is still wanted. */
const EVENTS_A_LOOK = 65_536

/** Where a route's thread lies, mm before slack: in holes, on straight runs between hole ends, in bends. */
export type ThreadMeasure = { throughMm: number; runMm: number; bendMm: number }

/**
 * Measures the thread along a route.
 *
 * Straight runs between hole ends, the length of the hole for each pass, half a turn of the thread's
 * own diameter round each bridge, half a turn of the bead round a turn bead, one turn for a knot.
 *
 * @param upTo - When given, entry `i` receives the mm laid by the end of event `i`.
 * @param checkpoint - Called now and then; throws when the measure is no longer wanted.
 */
export function measureThread(
  events: EventList,
  geometry: PartGeometry,
  upTo?: Float64Array,
  checkpoint: Checkpoint = neverStops,
): ThreadMeasure {
  const walk: Walk = { throughMm: 0, runMm: 0, bendMm: 0, at: false, x: 0, y: 0 }
  for (let index = 0; index < events.count; index += 1) {
    if (index % EVENTS_A_LOOK === 0) checkpoint()
    step(walk, events, geometry, index)
    if (upTo !== undefined) upTo[index] = walk.throughMm + walk.runMm + walk.bendMm
  }
  const { throughMm, runMm, bendMm } = walk
  return { throughMm, runMm, bendMm }
}

/** `at` is false while the thread has no place to run from: at a new length and round a turn bead. */
type Walk = ThreadMeasure & { at: boolean; x: number; y: number }

function step(walk: Walk, events: EventList, geometry: PartGeometry, index: number): void {
  const a = events.a[index] ?? 0
  const code = events.code[index] ?? 0
  switch (events.kind[index]) {
    case PICK_UP: {
      const end = a + (events.b[index] ?? 0)
      for (let at = a; at < end; at += 1) {
        through(walk, geometry, events.pool[at] ?? 0, events.poolDirection[at] ?? 0)
      }
      return
    }
    case PASS:
      through(walk, geometry, a, code & 3)
      return
    case HOOK:
      bendRound(walk, geometry, a, events.b[index] ?? 0, code)
      return
    case TURN:
      turnRound(walk, geometry, a, code)
      return
    case TAIL:
      leaveFrom(walk, geometry, a, code)
      return
    case JOIN:
      walk.throughMm += geometry.joinLengthMm
      walk.at = false
      return
    case FINDING:
      walk.bendMm += (Math.PI * (FINDING_WIRE_MM + geometry.threadMm)) / 2
      return
    case KNOT:
      walk.bendMm += 2 * Math.PI * geometry.threadMm
      return
    case ADD_THREAD:
      walk.at = false
  }
}

function through(walk: Walk, geometry: PartGeometry, bead: number, direction: number): void {
  const entry = direction ^ 1
  const x = holeEndX(geometry, bead, entry)
  const y = holeEndY(geometry, bead, entry)
  if (walk.at && !geometry.strung) walk.runMm += drawn(distance(walk, x, y), geometry)
  walk.throughMm += geometry.lengthMm[bead] ?? 0
  leaveFrom(walk, geometry, bead, direction)
}

function leaveFrom(walk: Walk, geometry: PartGeometry, bead: number, edge: number): void {
  walk.x = holeEndX(geometry, bead, edge)
  walk.y = holeEndY(geometry, bead, edge)
  walk.at = true
}

function distance({ x: fromX, y: fromY }: Walk, x: number, y: number): number {
  return Math.sqrt((x - fromX) ** 2 + (y - fromY) ** 2)
}

/** A run from hole to hole as it is drawn against the walls; the thread still has to get round them. */
function drawn(runMm: number, { playMm, threadMm }: PartGeometry): number {
  return Math.max(Math.min(runMm, threadMm), runMm - playMm)
}

function bendRound(walk: Walk, geometry: PartGeometry, a: number, b: number, edge: number): void {
  const x = (holeEndX(geometry, a, edge) + holeEndX(geometry, b, edge)) / 2
  const y = (holeEndY(geometry, a, edge) + holeEndY(geometry, b, edge)) / 2
  if (walk.at) walk.runMm += distance(walk, x, y)
  walk.bendMm += Math.PI * geometry.threadMm
  walk.x = x
  walk.y = y
  walk.at = true
}

function turnRound(walk: Walk, geometry: PartGeometry, bead: number, around: number): void {
  if (around === AROUND_BEAD) {
    walk.bendMm += (Math.PI * (geometry.diameterMm[bead] ?? 0)) / 2
    walk.at = false
  } else {
    walk.bendMm += Math.PI * geometry.threadMm
  }
}
