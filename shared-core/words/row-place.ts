import type { BeadIndex } from '../chart/bead-index.ts'
import type { StitchKind } from '../chart/chart.ts'
import { isOddColumn } from '../chart/stitch-pitch.ts'

/** A bead's place in a word chart: its row from the top, its bead from the left and how many the row has, from 1. */
export type RowPlace = Readonly<{ row: number; bead: number; of: number }>

/** The row of a bead as the word chart counts: from 1 at the top, in peyote half rows. */
export function wordRow(stitch: StitchKind, { rowOf, atOf }: BeadIndex, bead: number): number {
  const row = rowOf[bead] ?? 0
  if (stitch !== 'peyote') return row + 1
  return 2 * row + (isOddColumn(atOf[bead] ?? 0) ? 2 : 1)
}

/** Where a bead lies as the word chart counts: places without a bead are not counted, in peyote those of its half row are. */
export function rowPlace(stitch: StitchKind, index: BeadIndex, bead: number): RowPlace {
  const row = wordRow(stitch, index, bead)
  const chartRow = index.rowOf[bead] ?? 0
  let [before, of] = [0, 0]
  for (
    let next = index.rowStart[chartRow] ?? 0;
    next < (index.rowStart[chartRow + 1] ?? 0);
    next += 1
  ) {
    if (wordRow(stitch, index, next) !== row) continue
    of += 1
    if (next <= bead) before += 1
  }
  return { row, bead: before, of }
}
