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
  let from = nextBead(cells, 0)
  while (from < cells.length) {
    // The built-in search is several times quicker than a loop on the long runs of real charts.
    const blank = cells.indexOf(0, from)
    const to = blank < 0 ? cells.length : blank
    into[length] = start + 2 * from
    into[length + 1] = start + 2 * to
    length += 2
    from = nextBead(cells, to)
  }
  return length
}

function nextBead(cells: Uint16Array, from: number): number {
  let i = from
  while (i < cells.length && cells[i] === 0) i += 1
  return i
}

function peyoteStripes(rows: readonly ChartRow[]): Stripes {
  const above: number[] = []
  const below: number[] = []
  return {
    perRow: 2,
    count: rows.length === 0 ? 0 : 2 * rows.length + 1,
    read: (index, into) => {
      // An odd stripe is covered by one row alone: the lower half of its even beads, the upper half
      // of its odd ones. An even stripe holds even beads of this row and odd beads of the row above.
      const row = rows[index >> 1]
      if (index % 2 === 1) return readRuns(row, into)
      const evens = readRuns(row, below)
      const odds = readRuns(rows[(index >> 1) - 1], above)
      return interleave({ evens: below, evenLength: evens, odds: above, oddLength: odds, into })
    },
  }
}

type Interleaving = Readonly<{
  evens: readonly number[]
  evenLength: number
  odds: readonly number[]
  oddLength: number
  into: number[]
}>

/** Even columns of one row and odd columns of another: solid where both have beads, a comb where one has. */
function interleave({ evens, evenLength, odds, oddLength, into }: Interleaving): number {
  let [i, j, length] = [0, 0, 0]
  let from = Number.NEGATIVE_INFINITY
  while (i < evenLength || j < oddLength) {
    const nextEven = i < evenLength ? (evens[i] ?? Infinity) : Infinity
    const nextOdd = j < oddLength ? (odds[j] ?? Infinity) : Infinity
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
