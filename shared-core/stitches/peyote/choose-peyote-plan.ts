import type { BeadIndex } from '../../chart/bead-index.ts'
import { DOWN, UP } from '../../route/event-codes.ts'
import { type Runs, runLength } from '../staggered/find-runs.ts'
import { planRuns, type RunPlan, touching, touchingCount } from '../staggered/plan-runs.ts'
import type { StitchTask } from '../stitch.ts'

/** A plan with the runs that are strung together at its start. */
export type PeyotePlan = Readonly<{ plan: RunPlan; strung: readonly number[] }>

/** Planned runs the search may spend in all. */
const SEARCH_BUDGET = 500_000

/** Start runs looked at, at most. */
const MAX_STARTS = 32

/**
 * The plan with the fewest joins and weaves, then the fewest turns that need a figure of eight: the
 * string should end over a bead of its first half row. The maker's own start row and side are kept.
 */
export function choosePeyotePlan(
  lattice: BeadIndex,
  runs: Runs,
  component: readonly number[],
  { settings, checkpoint }: StitchTask,
): PeyotePlan {
  let best: (PeyotePlan & Readonly<{ cost: number }>) | undefined
  let spent = 0
  for (const run of startRuns(runs, component, settings.startRow)) {
    for (const outward of outwardSides(runs, run, settings.startRow)) {
      const strung = touching(runs, run, outward)
      const alongs =
        settings.startSide === undefined ? [1, -1] : [settings.startSide === 'left' ? 1 : -1]
      for (const along of alongs) {
        // The start run's far end is where the thread leaves: as after a ladder.
        const plan = planRuns(
          lattice,
          runs,
          { run, along, outward, ladder: true },
          { alsoStrung: [...strung], overshoot: 0.5, near: 1.5, checkpoint },
        )
        const cost =
          plan.joins + plan.weaves + (endsOnStart(lattice, runs, run, strung, along) ? 0 : 0.5)
        spent += plan.order.length + 1
        if (best === undefined || cost < best.cost) best = { plan, strung: [...strung], cost }
      }
    }
    if (spent > SEARCH_BUDGET) break
  }
  if (best !== undefined) return best
  const start = { run: component[0] ?? 0, along: 1, outward: DOWN, ladder: true }
  return { plan: planRuns(lattice, runs, start), strung: [] }
}

function startRuns(
  runs: Runs,
  component: readonly number[],
  startRow: number | undefined,
): readonly number[] {
  const asked = component.filter((run) => (runs.row[run] ?? 0) >> 1 === startRow)
  if (asked.length > 0) return asked.slice(0, MAX_STARTS)
  if (component.length <= MAX_STARTS) return component
  const widest = component.reduce((a, b) => (runLength(runs, b) > runLength(runs, a) ? b : a))
  const turning = component.filter(
    (run) => touchingCount(runs, run, UP) !== 1 || touchingCount(runs, run, DOWN) !== 1,
  )
  return [...new Set([component[0] ?? 0, component.at(-1) ?? 0, widest, ...turning])].slice(
    0,
    MAX_STARTS,
  )
}

/** The sides a start may grow on; a start row asked for is strung whole, so it grows away from its other half. */
function outwardSides(runs: Runs, run: number, startRow: number | undefined): readonly number[] {
  const sides = [DOWN, UP].filter((side) => touchingCount(runs, run, side) > 0)
  if (sides.length === 0) return [DOWN]
  if (startRow === undefined) return sides
  const whole = ((runs.row[run] ?? 0) & 1) === 0 ? DOWN : UP
  return sides.includes(whole) ? [whole] : sides
}

/** Whether the string's last bead lies in its first half row, so that the next row begins over it. */
function endsOnStart(
  { atOf }: BeadIndex,
  runs: Runs,
  run: number,
  strung: Int32Array,
  along: number,
): boolean {
  const end = (other: number) =>
    along * (atOf[(along > 0 ? runs.last[other] : runs.first[other]) ?? 0] ?? 0)
  return strung.every((other) => end(other) < end(run))
}
