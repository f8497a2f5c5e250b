import { threadGapMm } from '../../chart/stitch-pitch.ts'
import { LEFT, RIGHT } from '../../route/event-codes.ts'
import { beginRow, createEventWriter, finishEvents } from '../../route/event-writer.ts'
import { findRuns, type Runs } from '../staggered/find-runs.ts'
import { groupRuns } from '../staggered/group-runs.ts'
import { layPlanned } from '../staggered/lay-planned.ts'
import { type PlannedRun, type RunPlan, touchingCount } from '../staggered/plan-runs.ts'
import { stitchWarnings } from '../staggered/stitch-warnings.ts'
import type { RouteDraft, Stitch, StitchTask } from '../stitch.ts'
import { brickHops, hopCosts } from './brick-hops.ts'
import type { BrickWork } from './brick-work.ts'
import { chooseBrickPlan } from './choose-brick-plan.ts'
import { layBrickRun } from './lay-brick-run.ts'
import { layBrickStart, layTailTip } from './lay-brick-start.ts'

/** Brick stitch: beads upright, each hung on the thread bridge between two beads of the row before. */
export const brick: Stitch = { kind: 'brick', layRoute: layBrick }

/**
 * Lays the thread through a brick chart: start row, then row by row outwards, lobe by lobe.
 *
 * What hangs together with the most beads is stitched; beads that touch none of it are named.
 */
function layBrick(task: StitchTask): RouteDraft {
  const runs = findRuns(task.index)
  const [main = [], ...floating] = groupRuns(runs, task.settings.startSide)
  const work = beginWork(task, 1)
  if (main.length === 0)
    return { events: finishEvents(work.writer), warnings: [], hops: brickHops(work) }
  const plan = chooseBrickPlan(task, runs, main)
  const working = beginWork(task, plan.start.along)
  layPlan(working, runs, plan, task.settings.lockEveryRow ?? false)
  return {
    events: finishEvents(working.writer),
    warnings: stitchWarnings(working, { runs, main, floating: floating.flat(), plan, task }),
    hops: brickHops(working),
    start: plan.start.ladder ? 'ladder' : 'two-bead',
  }
}

function beginWork({ index, geometry, holds, checkpoint }: StitchTask, along: number): BrickWork {
  return {
    index,
    hopMm: hopCosts(geometry, threadGapMm(geometry.threadMm)),
    along,
    writer: createEventWriter(index.count * 3 + 16, index.count, checkpoint),
    holds,
    worked: new Uint8Array(index.count),
    bridges: new Uint8Array(index.count),
    shownAt: [],
    necks: [],
    openSeams: [],
    weaver: undefined,
  }
}

function layPlan(work: BrickWork, runs: Runs, plan: RunPlan, lockAlways: boolean): void {
  const { run, along, outward, ladder } = plan.start
  const beads = beadsOf(runs, run, along)
  beginRow(work.writer, runs.row[run] ?? 0, along > 0 ? LEFT : RIGHT)
  layBrickStart(work, { beads, outward, ladder })
  const [hung, byTail] = [
    plan.order.filter((run) => !run.byTail),
    plan.order.find((run) => run.byTail),
  ]
  layPlanned(
    runs,
    hung,
    (planned) => layHung(work, runs, planned, lockAlways),
    (other) => work.worked[runs.first[other] ?? 0] !== 0,
  )
  if (byTail !== undefined) layTip(work, runs, plan, byTail)
}

function layHung(
  work: BrickWork,
  runs: Runs,
  { run, edge, along }: PlannedRun,
  lockAlways: boolean,
): boolean {
  const first = runs.first[run] ?? 0
  const last = runs.last[run] ?? 0
  const isTip = touchingCount(runs, run, edge) === 0
  return layBrickRun(work, { first, last, edge, along, lockAlways, isTip })
}

function layTip(work: BrickWork, runs: Runs, { start }: RunPlan, planned: PlannedRun): void {
  const [first = 0, second = 0] = beadsOf(runs, start.run, start.along)
  beginRow(work.writer, runs.row[planned.run] ?? 0, start.along > 0 ? LEFT : RIGHT)
  const across = start.along > 0 ? RIGHT : LEFT
  layTailTip(work, {
    tip: runs.first[planned.run] ?? 0,
    first,
    second,
    outward: planned.edge,
    across,
  })
}

/** A run's beads in the order they are worked. */
function beadsOf(runs: Runs, run: number, along: number): readonly number[] {
  const first = runs.first[run] ?? 0
  const last = runs.last[run] ?? 0
  return Array.from({ length: last - first + 1 }, (_, at) => (along > 0 ? first + at : last - at))
}
