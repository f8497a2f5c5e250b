import type { BeadIndex } from '../../chart/bead-index.ts'
import { type Checkpoint, neverStops } from '../../route/checkpoint.ts'
import { UP } from '../../route/event-codes.ts'
import { type Runs, runLength } from './find-runs.ts'

/** How a plan begins: the start run, the end it is begun at (1 left, -1 right), the side worked first, ladder or not. */
export type PlanStart = Readonly<{ run: number; along: number; outward: number; ladder: boolean }>

/** One run in working order: the side it grows on, the way it is worked, and whether the start tail adds it. */
export type PlannedRun = Readonly<{ run: number; edge: number; along: number; byTail: boolean }>

/**
 * The order in which the runs are worked, and what it costs: `joins` are runs that cannot simply grow
 * from finished work, `weaves` the times the thread must travel through beads to go on.
 */
export type RunPlan = Readonly<{
  start: PlanStart
  order: readonly PlannedRun[]
  joins: number
  weaves: number
  /** Rows that begin inside the row before them: brick locks their first two beads. */
  locks: number
}>

/**
 * How a stitch's rows follow each other: runs strung together with the start run; half beads the
 * thread ends beyond a run's last bead; and how far, in half beads, the next row's first bead may lie
 * from where the thread is without weaving.
 */
export type PlanWays = Readonly<{
  alsoStrung?: readonly number[]
  overshoot?: number
  near?: number
  /** Called now and then; throws when the plan is no longer wanted. */
  checkpoint?: Checkpoint | undefined
}>

/** Runs planned between two looks at whether the plan is still wanted. */
const RUNS_A_LOOK = 64

/** Lobes waiting to be worked that are looked at for the next one; more only when none of these is ready. */
const WINDOW = 64

type Waiting = Readonly<{ run: number; edge: number }>
type Planner = {
  readonly index: BeadIndex
  readonly runs: Runs
  readonly done: Uint8Array
  readonly waiting: Waiting[]
  readonly order: PlannedRun[]
  /** The way the start row is worked: ties are broken by it, so that a mirrored chart gives the mirrored plan. */
  readonly startAlong: number
  readonly overshoot: number
  readonly near: number
  row: number
  at: number
  edge: number
  joins: number
  weaves: number
  locks: number
}

/**
 * Plans the work from a start: always go on with the nearest run that grows from finished work;
 * a run waits until everything it stands on is done, so that parts that meet are joined by the row
 * that bridges them; only when nothing else is left is a run worked on what there is of its footing.
 */
export function planRuns(
  index: BeadIndex,
  runs: Runs,
  start: PlanStart,
  { alsoStrung = [], overshoot = 0, near = 1, checkpoint = neverStops }: PlanWays = {},
): RunPlan {
  const planner: Planner = {
    index,
    runs,
    done: new Uint8Array(runs.count),
    waiting: [],
    order: [],
    overshoot,
    near,
    startAlong: start.along,
    row: 0,
    at: 0,
    edge: start.outward,
    joins: 0,
    weaves: 0,
    locks: 0,
  }
  finishRun(planner, start.run, start.ladder ? start.along : -start.along, start.outward)
  for (const run of alsoStrung) finishRun(planner, run, start.along, start.outward)
  const tip = tailTip(planner, start)
  for (let next = takeNext(planner); next !== undefined; next = takeNext(planner)) {
    if (planner.order.length % RUNS_A_LOOK === 0) checkpoint()
    if (planner.done[next.run] === 1) continue
    if (next.run === tip) continue
    planRun(planner, next)
  }
  if (tip >= 0) {
    planner.order.push({ run: tip, edge: start.outward ^ 1, along: start.along, byTail: true })
  }
  const { order, joins, weaves, locks } = planner
  return { start, order, joins, weaves, locks }
}

/** The single bead on the tail's side of a two-bead start, if that is all there is on that side. */
function tailTip({ runs }: Planner, { run, outward, ladder }: PlanStart): number {
  if (ladder || runLength(runs, run) !== 2) return -1
  const beyond = touching(runs, run, outward ^ 1)
  const tip = beyond[0]
  if (beyond.length !== 1 || tip === undefined || runLength(runs, tip) !== 1) return -1
  return touchingCount(runs, tip, outward ^ 1) === 0 ? tip : -1
}

/** Runs that touch a run on its `edge` side. */
export function touching(runs: Runs, run: number, edge: number): Int32Array {
  const { list, from, to } = touchingRange(runs, run, edge)
  return list.subarray(from, to)
}

/** How many runs touch a run on its `edge` side. */
export function touchingCount(runs: Runs, run: number, edge: number): number {
  const { from, to } = touchingRange(runs, run, edge)
  return to - from
}

/** Where the runs that touch a run on its `edge` side stand in their list. */
function touchingRange({ above, aboveStart, below, belowStart }: Runs, run: number, edge: number) {
  const list = edge === UP ? above : below
  const start = edge === UP ? aboveStart : belowStart
  return { list, from: start[run] ?? 0, to: start[run + 1] ?? 0 }
}

function finishRun(planner: Planner, run: number, along: number, edge: number): void {
  const { index, runs } = planner
  planner.done[run] = 1
  planner.row = runs.row[run] ?? 0
  const end = (along > 0 ? runs.last[run] : runs.first[run]) ?? 0
  planner.at = (index.atOf[end] ?? 0) + along * planner.overshoot
  planner.edge = edge
  // The way back comes first, so that the way on is found first: the list is searched from its end.
  pushTouching(planner, run, edge ^ 1)
  pushTouching(planner, run, edge)
}

function pushTouching(
  { runs, done, waiting, startAlong }: Planner,
  run: number,
  edge: number,
): void {
  const { list, from, to } = touchingRange(runs, run, edge)
  for (let at = from; at < to; at += 1) {
    const other = list[startAlong > 0 ? at : from + to - 1 - at] ?? 0
    if (done[other] === 0) waiting.push({ run: other, edge })
  }
}

function takeNext(planner: Planner): Waiting | undefined {
  const { waiting } = planner
  if (waiting.length === 0) return undefined
  let best = nearest(planner, Math.max(0, waiting.length - WINDOW), true)
  if (best < 0) best = nearest(planner, 0, true)
  if (best < 0) best = nearest(planner, 0, false)
  if (best < 0) {
    waiting.length = 0
    return undefined
  }
  const chosen = waiting[best]
  waiting.splice(best, 1)
  return chosen
}

/** Index in `waiting`, from `from` on, of the nearest run that is not done and (if asked) ready; drops the done ones. */
function nearest(planner: Planner, from: number, onlyReady: boolean): number {
  const { waiting, done } = planner
  let best = -1
  let bestCost = Number.POSITIVE_INFINITY
  for (let at = waiting.length - 1; at >= from; at -= 1) {
    const { run, edge } = waiting[at] ?? { run: 0, edge: UP }
    if (done[run] === 1) {
      waiting.splice(at, 1)
      if (best > at) best -= 1
      continue
    }
    if (onlyReady && !isReady(planner, run, edge)) continue
    const cost = distance(planner, run, edge)
    if (cost < bestCost) {
      best = at
      bestCost = cost
    }
  }
  return best
}

function isReady({ runs, done }: Planner, run: number, edge: number): boolean {
  const { list, from, to } = touchingRange(runs, run, edge ^ 1)
  for (let at = from; at < to; at += 1) if (done[list[at] ?? 0] === 0) return false
  return true
}

/** How far the thread is from a run's nearer end, in half beads; far where it must also turn to the other side. */
function distance(planner: Planner, run: number, edge: number): number {
  const base = (planner.runs.row[run] ?? 0) + (edge === UP ? 1 : -1)
  const { left, right } = ends(planner, run)
  const across = Math.min(Math.abs(planner.at - left), Math.abs(planner.at - right))
  return across + 2 * Math.abs(planner.row - base) + (planner.edge === edge ? 0 : 1)
}

/** Whether a bead of the row before lies at a position beyond a run's start. */
function isInside(planner: Planner, run: number, edge: number, at: number): boolean {
  const { list, from, to } = touchingRange(planner.runs, run, edge ^ 1)
  for (let place = from; place < to; place += 1) {
    const { left, right } = ends(planner, list[place] ?? 0)
    if (left <= at && at <= right) return true
  }
  return false
}

function ends({ index, runs }: Planner, run: number) {
  return {
    left: index.atOf[runs.first[run] ?? 0] ?? 0,
    right: index.atOf[runs.last[run] ?? 0] ?? 0,
  }
}

function planRun(planner: Planner, { run, edge }: Waiting): void {
  const { left, right } = ends(planner, run)
  const nearer = Math.abs(planner.at - right) - Math.abs(planner.at - left)
  const along = nearer === 0 ? planner.startAlong : Math.sign(nearer)
  const start = along > 0 ? left : right
  const base = (planner.runs.row[run] ?? 0) + (edge === UP ? 1 : -1)
  const isThere = planner.row === base && planner.edge === edge
  if (!isThere || Math.abs(planner.at - start) > planner.near) planner.weaves += 1
  if (!isReady(planner, run, edge)) planner.joins += 1
  if (isInside(planner, run, edge, start - along)) planner.locks += 1
  planner.order.push({ run, edge, along, byTail: false })
  finishRun(planner, run, along, edge)
  if (runLength(planner.runs, run) === 1 && touchingCount(planner.runs, run, edge) === 0) {
    // A tip lies across: the thread comes back into the work through the bead on its far side.
    planner.edge = edge ^ 1
    planner.row = base
    planner.at = left + along
  }
}
