import { AROUND_EDGE, LEFT, REINFORCE, RIGHT, UP } from '../../route/event-codes.ts'
import { beginRow, turn } from '../../route/event-writer.ts'
import type { Hops } from '../../route/find-weave.ts'
import { beadOfRun, layByRuns, lengthOfRun, type RunTask } from '../plain/lay-by-runs.ts'
import { type PlainWork, passOn, pick, weaveOn, workedBeside } from '../plain/plain-work.ts'
import type { RouteDraft, Stitch, StitchTask } from '../stitch.ts'

/** Square stitch: holes across, each bead tied to the one below it by a loop of thread. */
export const square: Stitch = { kind: 'square', layRoute: laySquare }

function laySquare(task: StitchTask): RouteDraft {
  const reinforce = task.settings.reinforce ?? false
  return layByRuns(task, {
    eventsPerBead: reinforce ? 5 : 3,
    layStart: stringRow,
    layRun: (work, run, hops) => laySquareRun(work, run, hops, reinforce),
  })
}

/** Strings the start row. */
function stringRow(work: PlainWork, run: RunTask): void {
  const direction = run.along > 0 ? RIGHT : LEFT
  beginRow(work.writer, work.index.rowOf[run.first] ?? 0, run.along > 0 ? LEFT : RIGHT)
  for (let at = 0; at < lengthOfRun(run); at += 1) {
    pick(work, beadOfRun(run, at), direction, at > 0)
  }
}

/**
 * Works a run: string a bead, back through the bead below it the other way, forward through the new
 * one again. Beads beyond the row below are strung out and, at the row's start, passed back through.
 */
function laySquareRun(work: PlainWork, run: RunTask, hops: Hops, reinforce: boolean): boolean {
  const direction = run.along > 0 ? RIGHT : LEFT
  const base = run.edge === UP ? 1 : -1
  const length = lengthOfRun(run)
  let held = 0
  while (held < length && workedBeside(work, beadOfRun(run, held), base, 0) < 0) held += 1
  if (held === length) return false
  const foot = workedBeside(work, beadOfRun(run, held), base, 0)
  if (!weaveOn(work, hops, (at, edge) => at === foot && edge === (direction ^ 1))) return false
  beginRow(work.writer, work.index.rowOf[run.first] ?? 0, run.along > 0 ? LEFT : RIGHT)
  stringOutwards(work, run, held, direction)
  for (let at = held; at < length; at += 1) {
    const bead = beadOfRun(run, at)
    const below = workedBeside(work, bead, base, 0)
    pick(work, bead, direction)
    if (below < 0) continue
    passOn(work, below, direction ^ 1)
    passOn(work, bead, direction)
  }
  if (reinforce) reinforceRow(work, run, base, direction)
  return true
}

/** Beads before the row below begins: strung outwards, then passed back towards it. */
function stringOutwards(work: PlainWork, run: RunTask, held: number, direction: number): void {
  for (let at = held - 1; at >= 0; at -= 1) {
    pick(work, beadOfRun(run, at), direction ^ 1, at < held - 1)
  }
  if (held > 0) turn(work.writer, AROUND_EDGE, beadOfRun(run, 0))
  for (let at = 0; at < held; at += 1) passOn(work, beadOfRun(run, at), direction)
}

/** Back through the whole row below and forward through the new row once more. */
function reinforceRow(work: PlainWork, run: RunTask, base: number, direction: number): void {
  for (let at = lengthOfRun(run) - 1; at >= 0; at -= 1) {
    const below = workedBeside(work, beadOfRun(run, at), base, 0)
    if (below >= 0) passOn(work, below, direction ^ 1, REINFORCE)
  }
  for (let at = 0; at < lengthOfRun(run); at += 1) {
    passOn(work, beadOfRun(run, at), direction, REINFORCE)
  }
}
