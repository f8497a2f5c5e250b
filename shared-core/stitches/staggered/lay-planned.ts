import { DOWN, UP } from '../../route/event-codes.ts'
import type { Runs } from './find-runs.ts'
import { type PlannedRun, touching } from './plan-runs.ts'

/** Times what could not be held is tried again, once more of the work is there to hold it. */
const MAX_SWEEPS = 16

/** Runs tried again in one sweep, at most: a chart of loose beads must not take for ever. */
const MAX_RETRIES = 2_000

/**
 * Lays runs in the order planned. A run that cannot be held as planned is tried from its other end,
 * and again when all others are laid, from whichever side there is work by then.
 *
 * @param layRun - Lays one run; false, having laid nothing, when it cannot be held there.
 * @param isWorked - Whether a run is in the work.
 */
export function layPlanned(
  runs: Runs,
  order: readonly PlannedRun[],
  layRun: (run: PlannedRun) => boolean,
  isWorked: (run: number) => boolean,
): void {
  const bothWays = (run: PlannedRun) => layRun(run) || layRun({ ...run, along: -run.along })
  let left = order.filter((run) => !bothWays(run))
  for (let sweep = 0; sweep < MAX_SWEEPS && left.length > 0; sweep += 1) {
    const before = left.length
    left = left.filter(
      (run, at) => at >= MAX_RETRIES || !sidesWithWork(runs, run, isWorked).some(bothWays),
    )
    if (left.length === before) return
  }
}

/** A planned run from each side on which it touches work. */
function sidesWithWork(
  runs: Runs,
  planned: PlannedRun,
  isWorked: (run: number) => boolean,
): readonly PlannedRun[] {
  return [UP, DOWN]
    .filter((edge) => touching(runs, planned.run, edge ^ 1).some(isWorked))
    .map((edge) => ({ ...planned, edge }))
}
