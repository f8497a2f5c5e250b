import type { BeadRuns } from './bead-rows.ts'
import type { Bridge } from './route.ts'

/** A bridge's place in its run, 1-based, counted from the edge the row is worked from. */
export function bridgePlace(runs: BeadRuns, { a, b }: Bridge, fromRight: boolean): number {
  return 1 + (fromRight ? (runs.last[b] ?? b) - b : a - (runs.first[a] ?? a))
}
