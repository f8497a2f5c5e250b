import { nextBead, nextBlank } from './bead-runs.ts'
import type { Chart, ChartRow } from './chart.ts'

/**
 * The beads of a chart by number: row by row from the top, left to right, 0-based.
 *
 * Arrays over beads. `rowStart` has one entry more than the chart has rows: row `r` holds the beads
 * from `rowStart[r]` to `rowStart[r + 1] - 1`. Rows and positions take two bytes each while they
 * fit and four beyond, so that a bead of an ordinary chart costs six bytes here.
 */
export type BeadIndex = Readonly<{
  count: number
  /** Row from the top. */
  rowOf: Uint16Array | Uint32Array
  /** Left edge in half beads. */
  atOf: Uint16Array | Uint32Array
  /** Slot's index in the palette. */
  slotOf: Uint16Array
  rowStart: Uint32Array
}>

/** Numbers the beads of a chart in one pass. Blanks have no number; a chart without beads has an empty index. */
export function indexBeads(chart: Chart): BeadIndex {
  const room = chart.rows.reduce((sum, row) => sum + row.cells.length, 0)
  const rowOf = shortestArray(chart.rows.length, room)
  const end = widestEnd(chart.rows)
  const atOf = shortestArray(end, room)
  const slotOf = new Uint16Array(room)
  const rowStart = new Uint32Array(chart.rows.length + 1)
  const places = [placesOf(atOf, 0, end), placesOf(atOf, 1, end)] as const
  let count = 0
  chart.rows.forEach((row, number) => {
    const from = count
    count = numberRow(row, from, { places, atOf, slotOf })
    rowOf.fill(number, from, count)
    rowStart[number + 1] = count
  })
  if (count === room) return { count, rowOf, atOf, slotOf, rowStart }
  // Copies, not views: a sparse chart must not keep the room its blanks would have taken.
  return {
    count,
    rowOf: rowOf.slice(0, count),
    atOf: atOf.slice(0, count),
    slotOf: slotOf.slice(0, count),
    rowStart,
  }
}

/** The number of the bead at a cell, or -1 where there is none. Constant time in rows without gaps. */
export function findBead(index: BeadIndex, row: number, at: number): number {
  const from = index.rowStart[row]
  const to = index.rowStart[row + 1]
  if (from === undefined || to === undefined || from === to) return -1
  const first = index.atOf[from] ?? 0
  // Beads lie two half beads apart, so the guess is right or, past a gap, too far to the right.
  const guess = Math.min(to - 1, from + ((at - first) >> 1))
  if (guess < from) return -1
  return index.atOf[guess] === at ? guess : search(index.atOf, at, from, guess)
}

type Numbers = Uint16Array | Uint32Array

/** The even or odd positions of a chart, so that a run of beads is one copy. */
function placesOf(like: Numbers, phase: number, end: number): Numbers {
  const count = Math.max(0, Math.ceil((end - phase) / 2))
  const places = like instanceof Uint16Array ? new Uint16Array(count) : new Uint32Array(count)
  for (let i = 0; i < count; i += 1) places[i] = phase + 2 * i
  return places
}

type Numbering = Readonly<{
  places: readonly [Numbers, Numbers]
  atOf: Numbers
  slotOf: Uint16Array
}>

function numberRow({ start, cells }: ChartRow, first: number, numbering: Numbering): number {
  const { places, atOf, slotOf } = numbering
  const across = places[start % 2 === 0 ? 0 : 1]
  const offset = start >> 1
  let bead = first
  for (let from = nextBead(cells, 0); from < cells.length; ) {
    const to = nextBlank(cells, from)
    atOf.set(across.subarray(offset + from, offset + to), bead)
    for (let i = from; i < to; i += 1) slotOf[bead + i - from] = (cells[i] ?? 0) - 1
    bead += to - from
    from = nextBead(cells, to)
  }
  return bead
}

function search(atOf: Numbers, at: number, from: number, to: number): number {
  let low = from
  let high = to - 1
  while (low <= high) {
    const middle = (low + high) >> 1
    const found = atOf[middle] ?? 0
    if (found === at) return middle
    if (found < at) low = middle + 1
    else high = middle - 1
  }
  return -1
}

function widestEnd(rows: readonly ChartRow[]): number {
  return rows.reduce((end, row) => Math.max(end, row.start + 2 * row.cells.length), 0)
}

function shortestArray(greatest: number, length: number): Numbers {
  return greatest <= 65_535 ? new Uint16Array(length) : new Uint32Array(length)
}
