import type { RouteSettings } from '../../design/design.ts'
import { DOWN, UP } from '../../route/event-codes.ts'
import { type Runs, runLength } from '../staggered/find-runs.ts'
import { planRuns, type RunPlan, touchingCount } from '../staggered/plan-runs.ts'
import type { StitchTask } from '../stitch.ts'

/** Planned runs the search may spend in all. */
const SEARCH_BUDGET = 500_000

/** Start runs looked at, at most. */
const MAX_STARTS = 32

/**
 * The plan with the fewest joins and weaves where beads stand in columns, the shortest start row
 * first; the maker's own start row and side are kept.
 */
export function chooseRowPlan(
  { index, settings, checkpoint }: StitchTask,
  runs: Runs,
  component: readonly number[],
): RunPlan {
  let best: RunPlan | undefined
  let spent = 0
  for (const run of startRuns(runs, component, settings.startRow)) {
    const sides = [DOWN, UP].filter((side) => touchingCount(runs, run, side) > 0)
    for (const outward of sides.length > 0 ? sides : [DOWN]) {
      for (const along of alongs(settings)) {
        const plan = planRuns(
          index,
          runs,
          { run, along, outward, ladder: true },
          { near: 0, checkpoint },
        )
        spent += plan.order.length + 1
        if (best === undefined || isBetter(runs, plan, best)) best = plan
      }
    }
    if (spent > SEARCH_BUDGET) break
  }
  return (
    best ?? planRuns(index, runs, { run: component[0] ?? 0, along: 1, outward: DOWN, ladder: true })
  )
}

function alongs({ startSide }: RouteSettings): readonly number[] {
  if (startSide === undefined) return [1, -1]
  return [startSide === 'left' ? 1 : -1]
}

function isBetter(runs: Runs, plan: RunPlan, best: RunPlan): boolean {
  const trouble = plan.joins + plan.weaves - best.joins - best.weaves
  if (trouble !== 0) return trouble < 0
  return runLength(runs, plan.start.run) < runLength(runs, best.start.run)
}

function startRuns(
  runs: Runs,
  component: readonly number[],
  startRow: number | undefined,
): readonly number[] {
  const asked = component.filter((run) => runs.row[run] === startRow)
  if (asked.length > 0) return asked.slice(0, MAX_STARTS)
  if (component.length <= MAX_STARTS) return component
  const turning = component.filter(
    (run) => touchingCount(runs, run, UP) !== 1 || touchingCount(runs, run, DOWN) !== 1,
  )
  const ends = [component[0] ?? 0, component.at(-1) ?? 0]
  return [...new Set([...ends, ...turning])].slice(0, MAX_STARTS)
}
