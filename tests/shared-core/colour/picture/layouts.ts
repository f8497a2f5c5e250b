import type { CellLayout } from '../../../../shared-core/colour/picture/picture.ts'

function layout(
  across: number,
  down: number,
  pitch: readonly [x: number, y: number],
  place: (column: number, row: number) => readonly [x: number, y: number],
): CellLayout {
  const cells = Array.from({ length: across * down }, (_, i) => {
    return place(i % across, Math.floor(i / across))
  })
  const x = cells.map(([at]) => at * pitch[0])
  const y = cells.map(([, at]) => at * pitch[1])
  return { x, y, pitchX: pitch[0], pitchY: pitch[1] }
}

/** Cells of 1 x 1 mm in a square grid, row by row. */
export const square = (across: number, down: number) =>
  layout(across, down, [1, 1], (column, row) => [column, row])

/** Cylinder beads in brick stitch: every other row half a bead out of step. */
export const brick = (across: number, down: number) =>
  layout(across, down, [1.6, 1.3], (column, row) => [column + (row % 2) / 2, row])

/** Cylinder beads in peyote: every other column half a bead lower. */
export const peyote = (across: number, down: number) =>
  layout(across, down, [1.3, 1.6], (column, row) => [column, row + (column % 2) / 2])
