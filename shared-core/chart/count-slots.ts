import type { Chart } from './chart.ts'

/**
 * Beads of each slot, exactly: entry `s` counts slot `s`; the array ends at the last slot used.
 *
 * One pass over the cells.
 */
export function countSlots(chart: Chart): Uint32Array {
  let counts = new Uint32Array(64)
  for (const { cells } of chart.rows) {
    for (let i = 0; i < cells.length; i += 1) {
      const cell = cells[i] ?? 0
      if (cell >= counts.length) counts = grown(counts, cell)
      counts[cell] = (counts[cell] ?? 0) + 1
    }
  }
  let end = counts.length
  while (end > 1 && counts[end - 1] === 0) end -= 1
  // Entry 0 counted the blanks.
  return counts.slice(1, end)
}

/** Beads in a chart, exactly: every cell that is not blank. */
export function countBeads(chart: Chart): number {
  let beads = 0
  for (const { cells } of chart.rows) {
    for (let i = 0; i < cells.length; i += 1) if (cells[i] !== 0) beads += 1
  }
  return beads
}

function grown(counts: Uint32Array, cell: number): Uint32Array<ArrayBuffer> {
  const wider = new Uint32Array(Math.max(cell + 1, counts.length * 2))
  wider.set(counts)
  return wider
}
