import type { CellRef } from '../../../../shared-core/chart/chart.ts'
import { cellCentre } from '../../../../shared-core/chart/stitch-pitch.ts'
import type { PictureHandle } from '../../../drawing/use-picture.ts'
import { plus } from './cells.ts'
import type { Lattice } from './lattice.ts'

/** Share of the picture's sides that the crosshair does not go into. */
const EDGE = 0.08

/** Moves the picture as far as it must for the crosshair to be seen. */
export function keepInSight(picture: PictureHandle, lattice: Lattice, cell: CellRef): void {
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
