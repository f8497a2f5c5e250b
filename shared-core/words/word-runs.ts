import { slotIndex, slotLabel } from '../chart/chart.ts'

/** Cells as runs in the order given: `(2)A, (1)gap, (3)B`. */
export function writeWordRuns(cells: Uint16Array): string {
  const runs: string[] = []
  for (let from = 0; from < cells.length; ) {
    const cell = cells[from] ?? 0
    let to = from + 1
    while (to < cells.length && cells[to] === cell) to += 1
    runs.push(`(${to - from})${cell === 0 ? 'gap' : slotLabel(cell - 1)}`)
    from = to
  }
  return runs.join(', ')
}

/** A run as typed: so many of one cell (0 for places without a bead). */
export type WordRun = Readonly<{ count: number; cell: number }>

/**
 * Reads one run: `(2)A`, `2A`, `2xA` or `A`; `gap` or `-` for places without a bead. A small letter
 * alone is read as its capital.
 *
 * @returns The run, or `undefined` when the text is no run, counts nothing, or counts past a million.
 */
export function readWordRun(text: string): WordRun | undefined {
  const match = /^(?:\((\d{1,6})\)|(\d{1,6})[x*]?)?(-|gap|[A-Z]{1,4}|[a-z])$/.exec(text)
  if (match === null) return undefined
  const count = Number(match[1] ?? match[2] ?? 1)
  const label = match[3] ?? ''
  const slot = label === '-' || label === 'gap' ? -1 : slotIndex(label.toUpperCase())
  if (slot === undefined || count === 0) return undefined
  return { count, cell: slot + 1 }
}
