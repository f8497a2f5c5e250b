import { finishEvents } from '../../route/event-writer.ts'
import type { Hops } from '../../route/find-weave.ts'
import { findRuns, type Runs } from '../staggered/find-runs.ts'
import { groupRuns } from '../staggered/group-runs.ts'
import { layPlanned } from '../staggered/lay-planned.ts'
import type { PlannedRun, RunPlan } from '../staggered/plan-runs.ts'
import { stitchWarnings } from '../staggered/stitch-warnings.ts'
import type { RouteDraft, StitchTask } from '../stitch.ts'
import { chooseRowPlan } from './choose-row-plan.ts'
import { columnHops } from './column-hops.ts'
import { beginPlainWork, type PlainWork } from './plain-work.ts'

/** One stitch's own way of laying a start row and each further run. */
export type RunLayer = Readonly<{
  eventsPerBead: number
  layStart: (work: PlainWork, start: RunTask) => void
  /** False when the run cannot be held where it is asked for. */
  layRun: (work: PlainWork, run: RunTask, hops: Hops) => boolean
}>

/** A run to lay: its ends (leftmost first), the side it grows on and the way it is worked (1 right, -1 left). */
export type RunTask = Readonly<{ first: number; last: number; edge: number; along: number }>

/** Lays a chart whose beads stand in columns: the start row, then run by run as planned. */
export function layByRuns(task: StitchTask, layer: RunLayer): RouteDraft {
  const { index, geometry, settings } = task
  const runs = findRuns(index, 0)
  const [main = [], ...floating] = groupRuns(runs, settings.startSide)
  const work = beginPlainWork(task, layer.eventsPerBead)
  const hops = columnHops(work, geometry, settings.startSide)
  if (main.length === 0) return { events: finishEvents(work.writer), warnings: [], hops }
  const plan = chooseRowPlan(task, runs, main)
  layPlan(work, runs, plan, { layer, hops })
  return {
    events: finishEvents(work.writer),
    warnings: stitchWarnings(work, { runs, main, floating: floating.flat(), plan, task }),
    hops,
  }
}

function layPlan(
  work: PlainWork,
  runs: Runs,
  plan: RunPlan,
  { layer, hops }: Readonly<{ layer: RunLayer; hops: Hops }>,
): void {
  const { run, along, outward } = plan.start
  layer.layStart(work, taskOf(runs, { run, along, edge: outward, byTail: false }))
  layPlanned(
    runs,
    plan.order,
    (planned) => layer.layRun(work, taskOf(runs, planned), hops),
    (other) => work.worked[runs.first[other] ?? 0] === 1,
  )
}

function taskOf(runs: Runs, { run, edge, along }: PlannedRun): RunTask {
  return { first: runs.first[run] ?? 0, last: runs.last[run] ?? 0, edge, along }
}

/** Bead number `at` of a run in the order it is worked. */
export function beadOfRun({ first, last, along }: RunTask, at: number): number {
  return along > 0 ? first + at : last - at
}

/** Beads in a run. */
export function lengthOfRun({ first, last }: RunTask): number {
  return last - first + 1
}
