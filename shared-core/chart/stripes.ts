import { nextBead, nextBlank } from './bead-runs.ts'
import type { Chart, ChartRow } from './chart.ts'
import { ringStripes } from './ring-stripes.ts'

/**
 * The silhouette of a chart cut into level stripes, from the top.
 *
 * Each stripe is the covered intervals in half beads, ascending and apart: `[from, to, from, to ...]`.
 * A bead covers `at` to `at + 2` (`at + 1` in right-angle weave, see `ringStripes`). Stripes are one row high, in peyote half a row, because its odd
 * columns hang half a row lower.
 */
export type Stripes = Readonly<{
  perRow: 1 | 2
  count: number
  /** Fills `into` with the intervals of stripe `index` and returns how many numbers they take. */
  read: (index: number, into: number[]) => number
}>

/** The stripes of a chart's silhouette; read one at a time, so nothing is held but the chart. */
export function silhouetteStripes({ stitch, rows }: Chart): Stripes {
  if (stitch === 'peyote') return peyoteStripes(rows)
  if (stitch === 'right-angle-weave') return ringStripes(rows)
  return {
    perRow: 1,
    count: rows.length,
    read: (index, into) => readRuns(rows[index], into),
  }
}

function readRuns(row: ChartRow | undefined, into: number[]): number {
  if (row === undefined) return 0
  const { start, cells } = row
  let length = 0
  for (let from = nextBead(cells, 0); from < cells.length; ) {
    const to = nextBlank(cells, from)
    into[length] = start + 2 * from
    into[length + 1] = start + 2 * to
    length += 2
    from = nextBead(cells, to)
  }
  return length
}

function peyoteStripes(rows: readonly ChartRow[]): Stripes {
  const runs = new LastRuns(rows)
  return {
    perRow: 2,
    count: rows.length === 0 ? 0 : 2 * rows.length + 1,
    read: (index, into) => {
      // An odd stripe is covered by one row alone: the lower half of its even beads, the upper half
      // of its odd ones. An even stripe holds even beads of this row and odd beads of the row above.
      const evens = runs.of(index >> 1)
      if (index % 2 === 0) return interleave({ evens, odds: runs.of((index >> 1) - 1), into })
      for (let i = 0; i < evens.length; i += 1) into[i] = evens.edges[i] ?? 0
      return evens.length
    },
  }
}

/** The runs of one row; `edges` may hold more numbers than `length`, left from longer rows. */
type Runs = { row: number; length: number; readonly edges: number[] }

/** The runs of the last two rows asked for, so that no row is searched more than once. */
class LastRuns {
  readonly #rows: readonly ChartRow[]
  readonly #kept: readonly [Runs, Runs] = [
    { row: -2, length: 0, edges: [] },
    { row: -2, length: 0, edges: [] },
  ]

  constructor(rows: readonly ChartRow[]) {
    this.#rows = rows
  }

  of(row: number): Readonly<Runs> {
    const runs = this.#kept[(row & 1) === 0 ? 0 : 1]
    if (runs.row !== row) {
      runs.length = readRuns(this.#rows[row], runs.edges)
      runs.row = row
    }
    return runs
  }
}

type Interleaving = Readonly<{ evens: Readonly<Runs>; odds: Readonly<Runs>; into: number[] }>

/** Even columns of one row and odd columns of another: solid where both have beads, a comb where one has. */
function interleave({ evens, odds, into }: Interleaving): number {
  let [i, j, length] = [0, 0, 0]
  let from = Number.NEGATIVE_INFINITY
  while (i < evens.length || j < odds.length) {
    const nextEven = i < evens.length ? (evens.edges[i] ?? Infinity) : Infinity
    const nextOdd = j < odds.length ? (odds.edges[j] ?? Infinity) : Infinity
    const to = Math.min(nextEven, nextOdd)
    length = cover({ from, to, even: i % 2 === 1, odd: j % 2 === 1, into, length })
    if (nextEven === to) i += 1
    if (nextOdd === to) j += 1
    from = to
  }
  return length
}

type Cover = Readonly<{
  from: number
  to: number
  even: boolean
  odd: boolean
  into: number[]
  length: number
}>

function cover({ from, to, even, odd, into, length: start }: Cover): number {
  if (even && odd) return append(into, start, from, to)
  if (!even && !odd) return start
  let length = start
  // A column is two half beads wide; even columns begin at multiples of four.
  const first = from + (((((even ? 0 : 2) - from) % 4) + 4) % 4)
  for (let at = first; at < to; at += 4) length = append(into, length, at, at + 2)
  return length
}

function append(into: number[], length: number, from: number, to: number): number {
  if (length > 0 && into[length - 1] === from) {
    into[length - 1] = to
    return length
  }
  into[length] = from
  into[length + 1] = to
  return length + 2
}
