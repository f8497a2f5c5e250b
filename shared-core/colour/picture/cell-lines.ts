import type { CellLayout } from './picture.ts'

/**
 * Cells in lines of the same height, from the top, each line from the left.
 *
 * `order` lists cell numbers; line `i` is `order[starts[i]]` up to before `order[starts[i + 1]]`.
 * `step` is the usual distance of neighbours in a line, mm.
 */
export type CellLines = Readonly<{ order: Int32Array; starts: Int32Array; step: number }>

/** Heights closer than this share of a pitch are one line. */
const SAME_LINE = 1e-3

/** Sorts a chart's cells into lines, whatever order they come in; about linear in the cells. */
export function cellLines(cells: CellLayout): CellLines {
  const lines = new Map<number, number[]>()
  for (let cell = 0; cell < cells.x.length; cell++) {
    const height = Math.round((cells.y[cell] as number) / (cells.pitchY * SAME_LINE))
    const line = lines.get(height)
    if (line === undefined) lines.set(height, [cell])
    else line.push(cell)
  }
  const sorted = [...lines.entries()].toSorted(([y1], [y2]) => y1 - y2).map(([, line]) => line)
  const byX = (a: number, b: number) => (cells.x[a] as number) - (cells.x[b] as number) || a - b
  for (const line of sorted) {
    // Charts come in order nearly always: look before sorting.
    if (line.some((cell, i) => i > 0 && byX(line[i - 1] as number, cell) > 0)) line.sort(byX)
  }
  const starts = new Int32Array(sorted.length + 1)
  for (const [i, line] of sorted.entries()) starts[i + 1] = (starts[i] as number) + line.length
  return { order: Int32Array.from(sorted.flat()), starts, step: leastGap(cells, sorted) }
}

/** The least gap between neighbours in any line; the cells' own pitch when no line has two. */
function leastGap({ x, pitchX }: CellLayout, lines: readonly (readonly number[])[]): number {
  let least = Number.POSITIVE_INFINITY
  for (const line of lines) {
    for (let i = 1; i < line.length; i++) {
      const gap = (x[line[i] as number] as number) - (x[line[i - 1] as number] as number)
      if (gap > pitchX * SAME_LINE && gap < least) least = gap
    }
  }
  return Number.isFinite(least) ? least : pitchX
}
