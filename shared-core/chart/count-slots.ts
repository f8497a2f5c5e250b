import type { Chart } from './chart.ts'

/** Slots up to this one are counted two cells at a time; few palettes have more. */
const FEW_SLOTS = 64
const TABLE = FEW_SLOTS * FEW_SLOTS

type Pairs = Readonly<{ first: Uint32Array; second: Uint32Array }>

/** Rows shorter than this are counted cell by cell. */
const LONG_ROW = 32

/**
 * Beads of each slot, exactly: entry `s` counts slot `s`; the array ends at the last slot used.
 *
 * One pass over the cells, two at a time where slots are few: half as many counts, then one small sum.
 * Two such pairs go to tables of their own: motifs repeat, and a count must not wait for the one before.
 */
export function countSlots(chart: Chart): Uint32Array {
  let counts: Uint32Array = new Uint32Array(FEW_SLOTS)
  const pairs = { first: new Uint32Array(TABLE), second: new Uint32Array(TABLE) }
  for (const { cells } of chart.rows) {
    const counted = countPairs(cells, pairs)
    counts = countCells(cells, counted, counts)
  }
  for (let pair = 0; pair < TABLE; pair += 1) {
    const count = (pairs.first[pair] ?? 0) + (pairs.second[pair] ?? 0)
    if (count > 0) addPair(counts, pair, count)
  }
  let end = counts.length
  while (end > 1 && counts[end - 1] === 0) end -= 1
  // Entry 0 counted the blanks.
  return counts.slice(1, end)
}

/** Counts a long row's cells by fours until a slot is not one of the few; returns how many cells were counted. */
function countPairs(cells: Uint16Array, { first, second }: Pairs): number {
  if (cells.length < LONG_ROW || cells.byteOffset % 4 !== 0) return 0
  const twos = new Uint32Array(cells.buffer, cells.byteOffset, cells.length >> 1)
  const end = twos.length - (twos.length % 2)
  for (let i = 0; i < end; i += 2) {
    const one = twos[i] ?? 0
    const other = twos[i + 1] ?? 0
    if (((one | other) & 0xffc0ffc0) !== 0) return 2 * i
    const pair = (one & 0x3f) | (one >>> 10)
    const nextPair = (other & 0x3f) | (other >>> 10)
    first[pair] = (first[pair] ?? 0) + 1
    second[nextPair] = (second[nextPair] ?? 0) + 1
  }
  return 2 * end
}

/** Either cell of a pair may be the first in memory; their counts add up the same. */
function addPair(counts: Uint32Array, pair: number, count: number): void {
  for (const cell of [pair % FEW_SLOTS, Math.floor(pair / FEW_SLOTS)]) {
    counts[cell] = (counts[cell] ?? 0) + count
  }
}

function countCells(cells: Uint16Array, from: number, table: Uint32Array): Uint32Array {
  let counts = table
  for (let i = from; i < cells.length; i += 1) {
    const cell = cells[i] ?? 0
    if (cell >= counts.length) counts = grown(counts, cell)
    counts[cell] = (counts[cell] ?? 0) + 1
  }
  return counts
}

function grown(counts: Uint32Array, cell: number): Uint32Array {
  const wider = new Uint32Array(Math.max(cell + 1, counts.length * 2))
  wider.set(counts)
  return wider
}

/** Beads in a chart, exactly: every cell that is not blank. */
export function countBeads(chart: Chart): number {
  let beads = 0
  for (const { cells } of chart.rows) {
    for (let i = 0; i < cells.length; i += 1) if (cells[i] !== 0) beads += 1
  }
  return beads
}
