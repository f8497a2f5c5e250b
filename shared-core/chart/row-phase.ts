import type { Chart, StitchKind } from './chart.ts'

/**
 * The parity of positions in each row of a chart: 0 where beads begin at even half beads, 1 at odd.
 *
 * A row with cells keeps its own. Rows without, and rows outside the chart, follow the stitch: brick
 * goes on half a bead out of step with its first row that has cells, right-angle weave has odd
 * positions in even rows, and every other stitch even positions.
 */
export function rowPhases({ stitch, rows }: Chart): (row: number) => number {
  const first = rows.findIndex(({ cells }) => cells.length > 0)
  const anchor = first < 0 ? 0 : (rows[first]?.start ?? 0) + first
  return (row) => {
    const own = rows[row]
    return own !== undefined && own.cells.length > 0
      ? parity(own.start)
      : stitchPhase(stitch, row, anchor)
  }
}

/**
 * The parity a stitch wants in a row.
 *
 * @param anchor - Brick only: start plus row of any row that is in step.
 */
export function stitchPhase(stitch: StitchKind, row: number, anchor: number): number {
  if (stitch === 'brick') return parity(anchor + row)
  return stitch === 'right-angle-weave' ? 1 - parity(row) : 0
}

/** 0 for even whole numbers, 1 for odd, negative ones too. */
export function parity(value: number): number {
  return Math.abs(value % 2)
}

/**
 * The rows whose beads are out of step with the stitch, from the top.
 *
 * In brick the parity most rows share is right, so that one slipped row is named and not its neighbours.
 */
export function misplacedRows({ stitch, rows }: Chart): readonly number[] {
  const anchor = stitch === 'brick' ? brickAnchor(rows) : 0
  return rows.flatMap(({ start, cells }, row) =>
    parity(start) === stitchPhase(stitch, row, anchor) || cells.every((cell) => cell === 0)
      ? []
      : [row],
  )
}

function brickAnchor(rows: Chart['rows']): number {
  const votes: [number, number] = [0, 0]
  rows.forEach(({ start, cells }, row) => {
    if (cells.length > 0) votes[parity(start + row) === 0 ? 0 : 1] += 1
  })
  return votes[1] > votes[0] ? 1 : 0
}
