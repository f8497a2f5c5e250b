import type { BeadIndex } from '../../chart/bead-index.ts'

/**
 * The runs of a brick chart: beads side by side without a gap, the unit in which rows are worked.
 *
 * Arrays over runs, row by row from the top, left to right. `above` and `below` list the runs of the
 * neighbouring rows that touch a run, those of run `r` from `aboveStart[r]` to `aboveStart[r + 1] - 1`.
 */
export type Runs = Readonly<{
  count: number
  row: Int32Array
  /** Leftmost and rightmost bead. */
  first: Int32Array
  last: Int32Array
  runOf: Int32Array
  above: Int32Array
  aboveStart: Int32Array
  below: Int32Array
  belowStart: Int32Array
}>

/**
 * Splits a chart's beads into runs and finds which touch. One pass over the beads.
 *
 * @param reach - Half beads by which beads of neighbouring rows that touch are out of step: 1 in
 *   brick, 0 where beads stand in columns.
 */
export function findRuns(index: BeadIndex, reach = 1): Runs {
  const count = countRuns(index)
  const row = new Int32Array(count)
  const first = new Int32Array(count)
  const last = new Int32Array(count)
  const runOf = new Int32Array(index.count)
  let run = -1
  for (let bead = 0; bead < index.count; bead += 1) {
    if (startsRun(index, bead)) {
      run += 1
      row[run] = index.rowOf[bead] ?? 0
      first[run] = bead
    }
    last[run] = bead
    runOf[bead] = run
  }
  return {
    count,
    row,
    first,
    last,
    runOf,
    ...findTouching(index, { row, first, last, count }, reach),
  }
}

/** Beads in a run. */
export function runLength(runs: Runs, run: number): number {
  return (runs.last[run] ?? 0) - (runs.first[run] ?? 0) + 1
}

function startsRun({ rowOf, atOf }: BeadIndex, bead: number): boolean {
  if (bead === 0 || rowOf[bead] !== rowOf[bead - 1]) return true
  return (atOf[bead] ?? 0) !== (atOf[bead - 1] ?? 0) + 2
}

function countRuns(index: BeadIndex): number {
  let count = 0
  for (let bead = 0; bead < index.count; bead += 1) if (startsRun(index, bead)) count += 1
  return count
}

type RunEnds = Readonly<{ row: Int32Array; first: Int32Array; last: Int32Array; count: number }>

/** Merges each row's runs with those of the row below; both are sorted, so the work is linear. */
function findTouching({ atOf }: BeadIndex, { row, first, last, count }: RunEnds, reach: number) {
  const upper: number[] = []
  const lower: number[] = []
  let under = 0
  for (let run = 0; run < count; run += 1) {
    const below = (row[run] ?? 0) + 1
    const left = (atOf[first[run] ?? 0] ?? 0) - reach
    const right = (atOf[last[run] ?? 0] ?? 0) + reach
    while (under < count && ends(under) < left) under += 1
    for (let other = under; other < count && begins(other) <= right; other += 1) {
      if ((begins(other) - left) % 2 !== 0) continue
      upper.push(run)
      lower.push(other)
    }
    function ends(other: number): number {
      const at = row[other] ?? 0
      if (at !== below) return at < below ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY
      return atOf[last[other] ?? 0] ?? 0
    }
    function begins(other: number): number {
      return row[other] === below ? (atOf[first[other] ?? 0] ?? 0) : Number.POSITIVE_INFINITY
    }
  }
  const down = listBy(upper, lower, count)
  const up = listBy(lower, upper, count)
  return { above: up.list, aboveStart: up.start, below: down.list, belowStart: down.start }
}

/** Groups `values` by their key, in order of the values' own appearance. */
function listBy(keys: readonly number[], values: readonly number[], count: number) {
  const start = new Int32Array(count + 1)
  for (const key of keys) start[key + 1] = (start[key + 1] ?? 0) + 1
  for (let key = 0; key < count; key += 1)
    start[key + 1] = (start[key + 1] ?? 0) + (start[key] ?? 0)
  const list = new Int32Array(values.length)
  const next = start.slice()
  keys.forEach((key, at) => {
    const place = next[key] ?? 0
    list[place] = values[at] ?? 0
    next[key] = place + 1
  })
  return { list, start }
}
