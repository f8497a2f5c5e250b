import { LEFT, RIGHT } from '../../route/event-codes.ts'
import { beginRow, createEventWriter, finishEvents } from '../../route/event-writer.ts'
import { findRuns, type Runs } from '../staggered/find-runs.ts'
import { groupRuns } from '../staggered/group-runs.ts'
import { layPlanned } from '../staggered/lay-planned.ts'
import { stitchWarnings } from '../staggered/stitch-warnings.ts'
import type { RouteDraft, Stitch, StitchTask } from '../stitch.ts'
import { choosePeyotePlan, type PeyotePlan } from './choose-peyote-plan.ts'
import { type HalfRows, halfRows } from './half-rows.ts'
import { layPeyoteRun } from './lay-peyote-run.ts'
import { layPeyoteStart } from './lay-peyote-start.ts'
import { peyoteHopCosts, peyoteHops } from './peyote-hops.ts'
import type { PeyoteWork } from './peyote-work.ts'

/** Flat peyote, even, odd or shaped: holes across, each bead over the gap between two of the half row before. */
export const peyote: Stitch = { kind: 'peyote', layRoute: layPeyote }

/** Lays the thread through a peyote chart: two half rows strung together, then half row by half row. */
function layPeyote(task: StitchTask): RouteDraft {
  const rows = halfRows(task.index)
  const runs = findRuns(rows.lattice)
  const [main = [], ...floating] = groupRuns(runs, task.settings.startSide)
  const idle = beginWork(task, rows, 1)
  if (main.length === 0) {
    return { events: finishEvents(idle.writer), warnings: [], hops: peyoteHops(idle) }
  }
  const chosen = choosePeyotePlan(rows.lattice, runs, main, task)
  const work = beginWork(task, rows, chosen.plan.start.along)
  layPlan(work, runs, chosen)
  return {
    events: finishEvents(work.writer),
    warnings: stitchWarnings(work, {
      runs,
      main,
      floating: floating.flat(),
      plan: chosen.plan,
      task,
      rowOf: (run) => (runs.row[run] ?? 0) >> 1,
      beadOf: (bead) => rows.beadOf[bead] ?? 0,
    }),
    hops: peyoteHops(work),
  }
}

function beginWork(
  { index, geometry, holds, checkpoint }: StitchTask,
  rows: HalfRows,
  along: number,
): PeyoteWork {
  return {
    rows,
    lattice: rows.lattice,
    hopMm: peyoteHopCosts(geometry),
    along,
    writer: createEventWriter(index.count * 2 + 16, index.count, checkpoint),
    holds,
    worked: new Uint8Array(index.count),
    bridges: new Uint8Array(index.count),
    shownAt: [],
    necks: [],
    weaver: undefined,
    at: -1,
  }
}

function layPlan(work: PeyoteWork, runs: Runs, { plan, strung }: PeyotePlan): void {
  const { run, along } = plan.start
  const beads = [run, ...strung].flatMap((part) => {
    const first = runs.first[part] ?? 0
    return Array.from({ length: (runs.last[part] ?? 0) - first + 1 }, (_, at) => first + at)
  })
  beginRow(work.writer, (runs.row[run] ?? 0) >> 1, along > 0 ? LEFT : RIGHT)
  layPeyoteStart(work, beads, along)
  layPlanned(
    runs,
    plan.order,
    ({ run: next, edge, along: way }) =>
      layPeyoteRun(work, {
        first: runs.first[next] ?? 0,
        last: runs.last[next] ?? 0,
        edge,
        along: way,
      }),
    (other) => work.worked[runs.first[other] ?? 0] === 1,
  )
}
