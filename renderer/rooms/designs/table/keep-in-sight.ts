import type { CellRef } from '../../../../shared-core/chart/chart.ts'
import { cellCentre } from '../../../../shared-core/chart/stitch-pitch.ts'
import type { PictureHandle } from '../../../drawing/use-picture.ts'
import { plus } from './cells.ts'
import type { Lattice } from './lattice.ts'

/** Smaller than this on the page, a bead cannot be met by any hand. */
const LEAST_PX = 0.4
/** How large a bead is shown that was brought nearer. */
const NEAR_PX = 24

/** Whether beads are shown too small to be drawn on: a hand's breadth would be thousands of them. */
export function isTooFar(picture: PictureHandle): boolean {
  const { beadMm, ratio } = picture.picture()
  return (beadMm * picture.view().scale) / ratio < LEAST_PX
}

/** Shows a cell in the middle, large enough to be drawn on. */
export function bringNear(picture: PictureHandle, lattice: Lattice, cell: CellRef): void {
  const { row, at } = plus(cell, lattice.origin)
  const { xMm, yMm } = cellCentre(lattice.pitch, row, at)
  const { beadMm, ratio, canvas } = picture.picture()
  const scale = (NEAR_PX * ratio) / beadMm
  picture.setView({
    scale,
    xMm: xMm - canvas.width / scale / 2,
    yMm: yMm - canvas.height / scale / 2,
  })
}

/** Share of the picture's sides that the crosshair does not go into. */
const EDGE = 0.08

/** Moves the picture as far as it must for the crosshair to be seen. */
export function keepInSight(picture: PictureHandle, lattice: Lattice, cell: CellRef): void {
  if (isTooFar(picture)) {
    bringNear(picture, lattice, cell)
    return
  }
  const { row, at } = plus(cell, lattice.origin)
  const { xMm, yMm } = cellCentre(lattice.pitch, row, at)
  const view = picture.view()
  const { width, height } = picture.picture().canvas
  if (width <= 1 || height <= 1) return
  const across = beyond(xMm, view.xMm, width / view.scale)
  const down = beyond(yMm, view.yMm, height / view.scale)
  if (across === 0 && down === 0) return
  picture.setView({ ...view, xMm: view.xMm + across, yMm: view.yMm + down })
}

/** How far a window from `start` on must move for a point to lie well inside it. */
function beyond(point: number, start: number, length: number): number {
  const edge = length * EDGE
  if (point < start + edge) return point - start - edge
  return point > start + length - edge ? point - start - length + edge : 0
}
