import type { RouteSettings } from '../../design/design.ts'
import { DOWN, UP } from '../../route/event-codes.ts'
import { type Runs, runLength } from '../staggered/find-runs.ts'
import {
  type PlanStart,
  planRuns,
  type RunPlan,
  touching,
  touchingCount,
} from '../staggered/plan-runs.ts'
import type { StitchTask } from '../stitch.ts'

/** Planned runs the search may spend in all, so that a giant chart is not searched for ever. */
const SEARCH_BUDGET = 500_000

/** Start runs looked at, at most. */
const MAX_STARTS = 64

/**
 * The plan with the fewest joins and weaves, then the least thread; the maker's own start row and
 * side are kept.
 *
 * Plans for one chart differ in thread by their ladder (l + 2 d more a bead than on a bridge) and
 * their lock passes (2 l + 2 d each), so these are compared; of equal plans the first row wins.
 *
 * @param component - Runs that belong together; the start is one of them with two beads or more.
 */
export function chooseBrickPlan(
  { index, geometry, settings, checkpoint }: StitchTask,
  runs: Runs,
  component: readonly number[],
): RunPlan {
  const l = geometry.lengthMm[0] ?? 0
  const d = geometry.diameterMm[0] ?? 0
  const extraMm = ({ start, order, locks }: RunPlan) =>
    (start.ladder ? runLength(runs, start.run) * (l + 2 * d) : 0) +
    (settings.lockEveryRow ? order.length : locks) * (2 * l + 2 * d)
  let best: RunPlan | undefined
  let spent = 0
  for (const run of startRuns(runs, component, settings.startRow)) {
    for (const start of startsOf(runs, run, settings)) {
      const plan = planRuns(index, runs, start, { checkpoint })
      spent += plan.order.length + 1
      if (best === undefined || isBetter(plan, best, extraMm)) best = plan
    }
    if (spent > SEARCH_BUDGET) break
  }
  return (
    best ?? planRuns(index, runs, { run: component[0] ?? 0, along: 1, outward: UP, ladder: false })
  )
}

function isBetter(plan: RunPlan, best: RunPlan, extraMm: (plan: RunPlan) => number): boolean {
  const trouble = plan.joins + plan.weaves - best.joins - best.weaves
  if (trouble !== 0) return trouble < 0
  // Less than a thousandth of a mm is the noise of sums, not thread.
  return extraMm(plan) < extraMm(best) - 1e-3
}

/** Candidate start runs, the likeliest first: the maker's row, else the outermost rows, the widest and the rest. */
function startRuns(
  runs: Runs,
  component: readonly number[],
  startRow: number | undefined,
): readonly number[] {
  const usable = component.filter((run) => runLength(runs, run) > 1)
  const asked = usable.filter((run) => runs.row[run] === startRow)
  if (asked.length > 0) return asked.slice(0, MAX_STARTS)
  const candidates = usable.length > 0 ? usable : component
  if (candidates.length <= MAX_STARTS) return candidates
  const ends = [...candidates.slice(0, 4), ...candidates.slice(-4)]
  const turning = candidates.filter((run) => isTurning(runs, run))
  const widest = candidates.reduce((a, b) => (runLength(runs, b) > runLength(runs, a) ? b : a))
  return [...new Set([...ends, widest, ...turning])].slice(0, MAX_STARTS)
}

/** A run where the shape splits, meets or ends. */
function isTurning(runs: Runs, run: number): boolean {
  return touchingCount(runs, run, UP) !== 1 || touchingCount(runs, run, DOWN) !== 1
}

function startsOf(runs: Runs, run: number, settings: RouteSettings): readonly PlanStart[] {
  const ladder = settings.start === 'ladder' || runLength(runs, run) !== 2
  const alongs =
    settings.startSide === undefined ? [1, -1] : [settings.startSide === 'left' ? 1 : -1]
  const sides = [UP, DOWN].filter((side) => touchingCount(runs, run, side) > 0)
  // A lone tip beyond a two-bead start is left to the tail.
  const worked = ladder ? sides : sides.filter((side) => !isLoneTip(runs, run, side))
  const outwards = worked.length > 0 ? worked : sides.length > 0 ? sides : [UP]
  return alongs.flatMap((along) => outwards.map((outward) => ({ run, along, outward, ladder })))
}

/** Whether all that lies on one side of a run is a single bead. */
function isLoneTip(runs: Runs, run: number, side: number): boolean {
  const [tip, another] = touching(runs, run, side)
  if (tip === undefined || another !== undefined || runLength(runs, tip) !== 1) return false
  return touchingCount(runs, tip, side) === 0
}
