import { isOddColumn } from '../../chart/stitch-pitch.ts'
import { AROUND_EDGE, LEFT, RIGHT, STEP_UP, UP } from '../../route/event-codes.ts'
import { beginRow, turn } from '../../route/event-writer.ts'
import type { Hops } from '../../route/find-weave.ts'
import { beadOfRun, layByRuns, lengthOfRun, type RunTask } from '../plain/lay-by-runs.ts'
import { type PlainWork, passOn, pick, weaveOn, workedBeside } from '../plain/plain-work.ts'
import type { RouteDraft, Stitch, StitchTask } from '../stitch.ts'

/** Flat herringbone: pairs of beads that lean together, each pair over the two beads below it. */
export const herringbone: Stitch = { kind: 'herringbone', layRoute: layHerringbone }

function layHerringbone(task: StitchTask): RouteDraft {
  return layByRuns(task, { eventsPerBead: 3, layStart: layBase, layRun: layPairs })
}

/** The base: a ladder, its last bead left on the side the work grows on. */
function layBase(work: PlainWork, run: RunTask): void {
  const length = lengthOfRun(run)
  const first = length % 2 === 1 ? run.edge : run.edge ^ 1
  beginRow(work.writer, work.index.rowOf[run.first] ?? 0, run.along > 0 ? LEFT : RIGHT)
  for (let at = 0; at < length; at += 1) {
    const direction = at % 2 === 0 ? first : first ^ 1
    pick(work, beadOfRun(run, at), direction, at === 1)
    if (at === 0) continue
    passOn(work, beadOfRun(run, at - 1), direction ^ 1)
    passOn(work, beadOfRun(run, at), direction)
  }
}

/**
 * Works a run of pairs: two beads strung, down through the bead under the second, up through the
 * next. After the last pair the thread turns round the edge and steps up through two beads. A bead
 * without a partner goes up and comes back round its own edge. Beads with nothing under them are
 * laddered onto the run when it is done.
 */
function layPairs(work: PlainWork, run: RunTask, hops: Hops): boolean {
  const { edge, along } = run
  const base = edge === UP ? 1 : -1
  const length = lengthOfRun(run)
  const foot = (at: number) => workedBeside(work, beadOfRun(run, at), base, 0)
  const held = Array.from({ length }, (_, at) => at).filter((at) => foot(at) >= 0)
  const [first] = held
  if (first === undefined || !comeUp(work, hops, foot(first), edge)) return false
  beginRow(work.writer, work.index.rowOf[run.first] ?? 0, along > 0 ? LEFT : RIGHT)
  let at = first
  while (at < length) {
    if (foot(at) < 0) {
      at += 1
      continue
    }
    if (at > first && !comeOver(work, hops, foot(at), edge)) break
    at = layPair(work, run, at, foot)
  }
  ladderRest(work, run, hops)
  return true
}

/** On to the next bead under the run: straight across where the thread lies beside it, else by weaving. */
function comeOver(work: PlainWork, hops: Hops, foot: number, edge: number): boolean {
  const { bead, edge: leaving } = work.writer
  const isBeside = [-2, 2].some((halves) => workedBeside(work, bead, 0, halves) === foot)
  if (!isBeside || leaving !== (edge ^ 1)) {
    return weaveOn(work, hops, (at, out) => at === foot && out === edge)
  }
  passOn(work, foot, edge)
  return true
}

/** Ladders the beads of a run that stand on nothing onto those that do, from the inside out. */
function ladderRest(work: PlainWork, run: RunTask, hops: Hops): void {
  for (const side of [1, -1]) {
    for (let place = 0; place < lengthOfRun(run); place += 1) {
      const bead = side > 0 ? run.first + place : run.last - place
      const before = workedBeside(work, bead, 0, -2 * side)
      if (work.worked[bead] === 1 || before < 0) continue
      if (!weaveOn(work, hops, (at) => at === before)) return
      const { edge } = work.writer
      pick(work, bead, edge ^ 1)
      passOn(work, before, edge)
      passOn(work, bead, edge ^ 1)
    }
  }
}

/** Lays the pair (or single bead) at place `at`; gives the next place. */
function layPair(work: PlainWork, run: RunTask, at: number, foot: (at: number) => number): number {
  const { edge } = run
  const first = beadOfRun(run, at)
  const isPair = at + 1 < lengthOfRun(run) && foot(at + 1) >= 0 && startsPair(work, run, first)
  pick(work, first, edge)
  if (isPair) {
    pick(work, beadOfRun(run, at + 1), edge ^ 1, true)
    passOn(work, foot(at + 1), edge ^ 1)
    return at + 2
  }
  turn(work.writer, AROUND_EDGE, first)
  passOn(work, first, edge ^ 1)
  passOn(work, foot(at), edge ^ 1)
  return at + 1
}

/** A pair is an even column and the odd one right of it, whichever is worked first. */
function startsPair({ index }: PlainWork, { along }: RunTask, bead: number): boolean {
  return isOddColumn(index.atOf[bead] ?? 0) === along < 0
}

/** Brings the thread out of a bead on the growing side: there already, by turning round the edge below it, or by weaving. */
function comeUp(work: PlainWork, hops: Hops, foot: number, edge: number): boolean {
  const { writer } = work
  const below = workedBeside(work, foot, edge === UP ? 1 : -1, 0)
  const isUnder = writer.edge === (edge ^ 1) && (writer.bead === foot || writer.bead === below)
  if (!isUnder) return weaveOn(work, hops, (at, leaving) => at === foot && leaving === edge)
  turn(writer, AROUND_EDGE, writer.bead)
  if (writer.bead !== foot) passOn(work, below, edge, STEP_UP)
  passOn(work, foot, edge, STEP_UP)
  return true
}
