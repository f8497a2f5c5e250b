import { type BeadIndex, findBead } from '../../chart/bead-index.ts'
import { LEFT, RIGHT, STITCH } from '../../route/event-codes.ts'
import { type EventWriter, hook, pass, pickUp, pickUpAlso } from '../../route/event-writer.ts'
import type { Weaver } from '../../route/find-weave.ts'
import type { HalfRows } from './half-rows.ts'

/**
 * What it costs to travel in peyote, mm: to a bead half a row off, to the next in the column, round
 * an edge thread, and in sight along a bead's outer side.
 */
export type PeyoteHopCosts = Readonly<{
  onward: number
  column: number
  turn: number
  inSight: number
}>

/**
 * Peyote work in progress. Bead numbers here are those of the half-row lattice; events are written
 * with the chart's. `bridges` has bit 1 when an edge thread joins a bead to the next one down its
 * column on the left, bit 2 on the right.
 */
export type PeyoteWork = {
  readonly rows: HalfRows
  readonly lattice: BeadIndex
  readonly hopMm: PeyoteHopCosts
  /** 1 when the start is strung to the right, -1 to the left. */
  readonly along: number
  readonly writer: EventWriter
  /** Passes each bead's hole holds, by the chart's numbers. */
  readonly holds: Uint16Array | undefined
  readonly worked: Uint8Array
  readonly bridges: Uint8Array
  readonly shownAt: number[]
  readonly necks: number[]
  weaver: Weaver | undefined
  /** The bead the thread leaves, in lattice numbers; its edge stands in the writer. */
  at: number
}

/** The worked bead `half` half rows below and `columns` to the right of a bead, or -1. */
export function workedAt(work: PeyoteWork, bead: number, half: number, columns: number): number {
  const { lattice, worked } = work
  const row = (lattice.rowOf[bead] ?? 0) + half
  const found = findBead(lattice, row, (lattice.atOf[bead] ?? 0) + columns)
  return found >= 0 && worked[found] === 1 ? found : -1
}

/** The direction code of work going right (1) or left (-1). */
export function towards(along: number): number {
  return along > 0 ? RIGHT : LEFT
}

/** Picks up a bead in the direction of work, in the same pick-up as the last one when `also`. */
export function pickBead(work: PeyoteWork, bead: number, direction: number, also = false): void {
  noteEdgeThread(work, bead, direction)
  const number = work.rows.beadOf[bead] ?? 0
  if (also) pickUpAlso(work.writer, number, direction)
  else pickUp(work.writer, number, direction)
  work.worked[bead] = 1
  work.at = bead
}

/** Passes a worked bead. */
export function passBead(
  work: PeyoteWork,
  bead: number,
  direction: number,
  purpose: number = STITCH,
): void {
  noteEdgeThread(work, bead, direction)
  pass(work.writer, work.rows.beadOf[bead] ?? 0, direction, purpose)
  work.at = bead
}

/** Whether an edge thread joins `upper` to the next bead down its column on its `edge` side. */
export function hasEdgeThread(work: PeyoteWork, upper: number, edge: number): boolean {
  return ((work.bridges[upper] ?? 0) & edgeBit(edge)) !== 0
}

/**
 * Goes under the edge thread beside the bead the thread leaves, if there is one; the loop that stays
 * is an edge thread itself, for the next turn to hold.
 */
export function hookEdge(work: PeyoteWork): boolean {
  const edge = work.writer.edge
  for (const [upper, lower] of edgeThreadsBeside(work, work.at)) {
    if (!hasEdgeThread(work, upper, edge)) continue
    const { beadOf } = work.rows
    hook(work.writer, beadOf[upper] ?? 0, beadOf[lower] ?? 0, edge)
    const beyond = upper === work.at || lower === work.at ? -1 : work.at
    if (beyond >= 0) layEdgeThread(work, beyond, isNear(work, upper, beyond) ? upper : lower, edge)
    return true
  }
  return false
}

/** Pairs of beads down a column whose edge thread lies within reach of a bead: beside it, or one bead off. */
export function edgeThreadsBeside(
  work: PeyoteWork,
  bead: number,
): readonly (readonly [upper: number, lower: number])[] {
  const up = workedAt(work, bead, -2, 0)
  const down = workedAt(work, bead, 2, 0)
  const up2 = up < 0 ? -1 : workedAt(work, bead, -4, 0)
  const down2 = down < 0 ? -1 : workedAt(work, bead, 4, 0)
  const pairs: (readonly [number, number])[] = [
    [up, bead],
    [bead, down],
    [up2, up],
    [down, down2],
  ]
  return pairs.filter(([a, b]) => a >= 0 && b >= 0)
}

function isNear({ lattice }: PeyoteWork, a: number, b: number): boolean {
  return Math.abs((lattice.rowOf[a] ?? 0) - (lattice.rowOf[b] ?? 0)) === 2
}

function layEdgeThread(work: PeyoteWork, a: number, b: number, edge: number): void {
  const upper = (work.lattice.rowOf[a] ?? 0) < (work.lattice.rowOf[b] ?? 0) ? a : b
  work.bridges[upper] = (work.bridges[upper] ?? 0) | edgeBit(edge)
}

/** A run between the same ends of two beads next to each other in a column lays an edge thread there. */
function noteEdgeThread(work: PeyoteWork, bead: number, direction: number): void {
  const { at, writer, lattice } = work
  const edge = writer.edge
  if (at < 0 || edge !== (direction ^ 1) || lattice.atOf[at] !== lattice.atOf[bead]) return
  if (isNear(work, at, bead)) layEdgeThread(work, at, bead, edge)
}

function edgeBit(edge: number): number {
  return edge === LEFT ? 1 : 2
}
