import type { Chart, ChartRow, StitchKind } from './chart.ts'

/**
 * A chart without holes or shaping, of one slot.
 *
 * Every row holds `columns` beads; brick rows lie half a bead out of step. In right-angle weave
 * `columns` and `rows` count units: joints that lie across and beads that stand alternate.
 *
 * @param size - Whole numbers, 1 or more.
 */
export function blockChart(
  stitch: StitchKind,
  { columns, rows }: Readonly<{ columns: number; rows: number }>,
  slot = 0,
): Chart {
  const filled = (start: number, beads: number): ChartRow => ({
    start,
    cells: new Uint16Array(beads).fill(slot + 1),
  })
  if (stitch === 'right-angle-weave') {
    return {
      stitch,
      rows: Array.from({ length: 2 * rows + 1 }, (_, row) =>
        row % 2 === 0 ? filled(1, columns) : filled(0, columns + 1),
      ),
    }
  }
  const start = (row: number) => (stitch === 'brick' ? row % 2 : 0)
  return { stitch, rows: Array.from({ length: rows }, (_, row) => filled(start(row), columns)) }
}
