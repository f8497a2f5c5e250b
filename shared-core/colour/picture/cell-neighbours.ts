import type { CellLines } from './cell-lines.ts'
import type { CellLayout } from './picture.ts'

/** The cells that touch each cell: those of cell `i` are `of[starts[i]]` up to before `of[starts[i + 1]]`. */
export type CellNeighbours = Readonly<{ starts: Int32Array; of: Int32Array }>

/** Gaps up to this share of a pitch still count as touching. */
const SLACK = 0.05

/**
 * Which cells share an edge, from where they lie alone.
 *
 * Two cells touch when they are at most a pitch apart both ways, and less than a pitch at least one
 * way (so corners do not touch). Works for any stitch: square, half a bead out of step, or peyote.
 */
export function cellNeighbours(cells: CellLayout, lines: CellLines): CellNeighbours {
  const pairs: number[] = []
  const { starts, order } = lines
  for (let line = 0; line + 1 < starts.length; line++) {
    const y = cells.y[order[starts[line] as number] as number] as number
    joinLine(cells, lines, line, pairs)
    for (let other = line + 1; other + 1 < starts.length; other++) {
      const dy = (cells.y[order[starts[other] as number] as number] as number) - y
      if (dy > cells.pitchY * (1 + SLACK)) break
      joinLines(cells, lines, [line, other], dy, pairs)
    }
  }
  return asNeighbours(pairs, cells.x.length)
}

/** Joins neighbours within one line. */
function joinLine(cells: CellLayout, lines: CellLines, line: number, pairs: number[]): void {
  const { order, starts } = lines
  for (let i = (starts[line] as number) + 1; i < (starts[line + 1] as number); i++) {
    const a = order[i - 1] as number
    const b = order[i] as number
    const dx = (cells.x[b] as number) - (cells.x[a] as number)
    if (dx <= cells.pitchX * (1 + SLACK)) pairs.push(a, b)
  }
}

/** Joins the cells of two lines `dy` apart, walking both from the left together. */
function joinLines(
  cells: CellLayout,
  { order, starts }: CellLines,
  [upper, lower]: readonly [number, number],
  dy: number,
  pairs: number[],
): void {
  const { x, pitchX, pitchY } = cells
  // Straight below a whole pitch only an overlap touches; higher up sides may touch too.
  const reach = pitchX * (dy < pitchY * (1 - SLACK) ? 1 + SLACK : 1 - SLACK)
  let from = starts[lower] as number
  const end = starts[lower + 1] as number
  for (let i = starts[upper] as number; i < (starts[upper + 1] as number); i++) {
    const a = order[i] as number
    const at = x[a] as number
    while (from < end && (x[order[from] as number] as number) < at - reach) from += 1
    for (let j = from; j < end; j++) {
      const b = order[j] as number
      if ((x[b] as number) > at + reach) break
      pairs.push(a, b)
    }
  }
}

function asNeighbours(pairs: readonly number[], count: number): CellNeighbours {
  const starts = new Int32Array(count + 1)
  for (const cell of pairs) starts[cell + 1] = (starts[cell + 1] as number) + 1
  for (let i = 0; i < count; i++) starts[i + 1] = (starts[i + 1] as number) + (starts[i] as number)
  const of = new Int32Array(pairs.length)
  const next = starts.slice(0, count)
  const put = (cell: number, neighbour: number) => {
    const place = next[cell] as number
    of[place] = neighbour
    next[cell] = place + 1
  }
  for (let i = 0; i < pairs.length; i += 2) {
    put(pairs[i] as number, pairs[i + 1] as number)
    put(pairs[i + 1] as number, pairs[i] as number)
  }
  return { starts, of }
}
