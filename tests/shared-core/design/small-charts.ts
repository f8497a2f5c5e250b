import type { Chart, StitchKind } from '../../../shared-core/chart/chart.ts'
import { drawChart } from '../stitches/draw-chart.ts'

/** Fourteen beads of brick stitch, ten of A and four of B. */
export const diamond = drawChart('brick', ['..A-A-', '.A-B-A-', 'A-B-B-A-', '.A-B-A-', '..A-A-'])

/** A full block of slot A. */
export function block(stitch: StitchKind, rows: number, columns: number): Chart {
  const offset = (row: number) => (stitch === 'brick' ? row % 2 : 0)
  return {
    stitch,
    rows: Array.from({ length: rows }, (_, row) => ({
      start: offset(row),
      cells: new Uint16Array(columns).fill(1),
    })),
  }
}
