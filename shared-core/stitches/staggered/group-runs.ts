import { DOWN, UP } from '../../route/event-codes.ts'
import { type Runs, runLength } from './find-runs.ts'
import { touching } from './plan-runs.ts'

/** Groups runs that hang together, the group with the most beads first. */
export function groupRuns(runs: Runs): readonly (readonly number[])[] {
  const seen = new Uint8Array(runs.count)
  const groups: { runs: number[]; beads: number }[] = []
  for (let run = 0; run < runs.count; run += 1) {
    if (seen[run] === 0) groups.push(collect(runs, run, seen))
  }
  groups.sort((a, b) => b.beads - a.beads)
  return groups.map((group) => group.runs.sort((a, b) => a - b))
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
