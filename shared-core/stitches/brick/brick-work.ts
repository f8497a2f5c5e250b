import type { BeadIndex } from '../../chart/bead-index.ts'
import { findBead } from '../../chart/bead-index.ts'
import { STITCH, UP } from '../../route/event-codes.ts'
import type { EventWriter } from '../../route/event-writer.ts'
import { hook, pass, pickUp, pickUpAlso } from '../../route/event-writer.ts'
import type { Weaver } from '../../route/find-weave.ts'

/**
 * Brick work in progress. Arrays over beads: `worked` is 1 once a bead is in the work; `bridges` has
 * bit 1 when a thread bridge joins a bead to its right neighbour on top, bit 2 below.
 */
export type BrickWork = {
  readonly index: BeadIndex
  readonly hopMm: HopCosts
  /** 1 when the start row is begun at its left, -1 at its right: ties are broken the same way from either side. */
  readonly along: number
  readonly writer: EventWriter
  /** Passes each bead's hole holds. */
  readonly holds: Uint16Array | undefined
  readonly worked: Uint8Array
  readonly bridges: Uint8Array
  /** Beads beside which the thread had to run in sight. */
  readonly shownAt: number[]
  /** Hanging of a row from a single bead, by that bead. */
  readonly necks: number[]
  /** Beads that meet work on their growing side which no bridge joins them to. */
  readonly openSeams: number[]
  weaver: Weaver | undefined
}

/**
 * What it costs to travel, in mm: into the neighbour in the row, into the next row, round a bridge
 * back into the same bead, and in sight along a bead's side.
 */
export type HopCosts = Readonly<{ beside: number; next: number; turn: number; inSight: number }>

/** A thread bridge by its two beads, left first. */
export type BrickBridge = Readonly<{ a: number; b: number }>

/** The bead of the row above (`rows` -1), the same (0) or below (1), `halves` half beads to the right; -1 if not worked. */
export function workedBead(work: BrickWork, bead: number, rows: number, halves: number): number {
  const { index, worked } = work
  const row = (index.rowOf[bead] ?? 0) + rows
  const found = findBead(index, row, (index.atOf[bead] ?? 0) + halves)
  return found >= 0 && worked[found] === 1 ? found : -1
}

/** Whether a bridge joins `a` to its right neighbour on their `edge` side. */
export function isBridged(work: BrickWork, a: number, edge: number): boolean {
  return ((work.bridges[a] ?? 0) & (1 << edge)) !== 0
}

/** Rows to the next row on an edge's side: -1 for up. */
export function rowStep(edge: number): number {
  return edge === UP ? -1 : 1
}

/** Picks up one bead in `direction`. */
export function pickOne(work: BrickWork, bead: number, direction: number): void {
  noteBridge(work, bead, direction)
  pickUp(work.writer, bead, direction)
  work.worked[bead] = 1
}

/** Picks up two beads at once: the first in `direction`, the second back. */
export function pickTwo(work: BrickWork, first: number, second: number, direction: number): void {
  pickOne(work, first, direction)
  noteBridge(work, second, direction ^ 1)
  pickUpAlso(work.writer, second, direction ^ 1)
  work.worked[second] = 1
}

/** Passes a worked bead. */
export function passBead(
  work: BrickWork,
  bead: number,
  direction: number,
  purpose: number = STITCH,
): void {
  noteBridge(work, bead, direction)
  pass(work.writer, bead, direction, purpose)
}

/** Hangs the bead just picked up (towards `edge ^ 1`) on a bridge and comes back up through it. */
export function hookAndReturn(
  work: BrickWork,
  bead: number,
  bridge: BrickBridge,
  edge: number,
): void {
  hook(work.writer, bridge.a, bridge.b, edge)
  pass(work.writer, bead, edge, STITCH)
}

/** A run of thread between the same ends of two neighbours in a row lays a bridge there. */
function noteBridge(work: BrickWork, bead: number, direction: number): void {
  const { index, writer, bridges } = work
  const from = writer.bead
  const edge = writer.edge
  if (from < 0 || edge !== (direction ^ 1) || index.rowOf[from] !== index.rowOf[bead]) return
  const apart = (index.atOf[bead] ?? 0) - (index.atOf[from] ?? 0)
  if (apart === 2) bridges[from] = (bridges[from] ?? 0) | (1 << edge)
  if (apart === -2) bridges[bead] = (bridges[bead] ?? 0) | (1 << edge)
}
