import type { StitchKind } from '../../../../shared-core/chart/chart.ts'
import type { ChartJson } from '../../../../shared-core/chart/chart-json.ts'

const ROWS = 6
const BEADS = 6

/** A small block of the first slot, in any stitch: what a new panel begins with. */
export function startChart(stitch: StitchKind): ChartJson {
  return { stitch, rows: Array.from({ length: rowsOf(stitch) }, (_, row) => rowOf(stitch, row)) }
}

function rowsOf(stitch: StitchKind): number {
  // A ladder is one row; right-angle weave begins and ends with beads that lie across.
  if (stitch === 'ladder') return 1
  return stitch === 'right-angle-weave' ? ROWS + 1 : ROWS
}

function rowOf(stitch: StitchKind, row: number) {
  if (stitch === 'brick') return { start: row % 2, cells: `${BEADS}A` }
  if (stitch !== 'right-angle-weave') return { start: 0, cells: `${BEADS}A` }
  return row % 2 === 0 ? { start: 1, cells: `${BEADS}A` } : { start: 0, cells: `${BEADS + 1}A` }
}
