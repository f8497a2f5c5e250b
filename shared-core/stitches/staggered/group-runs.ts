import { DOWN, UP } from '../../route/event-codes.ts'
import { type Runs, runLength } from './find-runs.ts'
import { touching } from './plan-runs.ts'

/**
 * Groups runs that hang together, the group with the most beads first.
 *
 * Runs stand row by row from the top, those of a row from the side the work begins at, so that of
 * equal choices a mirrored chart begun at the other side makes the mirrored one.
 */
export function groupRuns(
  runs: Runs,
  startSide: 'left' | 'right' = 'left',
): readonly (readonly number[])[] {
  const along = startSide === 'left' ? 1 : -1
  const inOrder = (a: number, b: number) =>
    (runs.row[a] ?? 0) - (runs.row[b] ?? 0) || along * (a - b)
  const seen = new Uint8Array(runs.count)
  const groups: { runs: number[]; beads: number }[] = []
  for (let run = 0; run < runs.count; run += 1) {
    if (seen[run] === 0) groups.push(collect(runs, run, seen))
  }
  for (const group of groups) group.runs.sort(inOrder)
  groups.sort((a, b) => b.beads - a.beads || inOrder(a.runs[0] ?? 0, b.runs[0] ?? 0))
  return groups.map((group) => group.runs)
}

function collect(runs: Runs, from: number, seen: Uint8Array) {
  const found = [from]
  let beads = 0
  seen[from] = 1
  for (let at = 0; at < found.length; at += 1) {
    const run = found[at] ?? 0
    beads += runLength(runs, run)
    for (const edge of [UP, DOWN]) {
      for (const other of touching(runs, run, edge)) {
        if (seen[other] === 1) continue
        seen[other] = 1
        found.push(other)
      }
    }
  }
  return { runs: found, beads }
}
