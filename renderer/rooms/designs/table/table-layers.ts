import type { CellRef } from '../../../../shared-core/chart/chart.ts'
import type { Stroke } from '../../../../shared-core/chart/edits/draw-line.ts'
import { beadBox, cellCentre } from '../../../../shared-core/chart/stitch-pitch.ts'
import type { OverlayLayer, OverlayPaint } from '../../../drawing/overlay.ts'
import { plus } from './cells.ts'
import type { Lattice } from './lattice.ts'

/** The crosshair: a ring round its cell and short lines along its row and its column. */
export function crosshairLayer(lattice: Lattice, cell: CellRef): OverlayLayer {
  return (paint) => {
    const { brush, x, y, ratio, colours } = paint
    const { left, top, width, height } = cellBox(lattice, cell, paint)
    const least = 7 * ratio
    const [w, h] = [Math.max(width, least), Math.max(height, least)]
    const box = new Path2D()
    box.roundRect(left + (width - w) / 2, top + (height - h) / 2, w, h, Math.min(w, h) * 0.2)
    const lines = new Path2D()
    const place = plus(cell, lattice.origin)
    const { xMm, yMm } = cellCentre(lattice.pitch, place.row, place.at)
    const reach = Math.max(18 * ratio, 1.2 * Math.max(w, h))
    lines.moveTo(x(xMm) - reach, y(yMm))
    lines.lineTo(x(xMm) - w / 2, y(yMm))
    lines.moveTo(x(xMm) + w / 2, y(yMm))
    lines.lineTo(x(xMm) + reach, y(yMm))
    lines.moveTo(x(xMm), y(yMm) - reach)
    lines.lineTo(x(xMm), y(yMm) - h / 2)
    lines.moveTo(x(xMm), y(yMm) + h / 2)
    lines.lineTo(x(xMm), y(yMm) + reach)
    for (const [colour, wide] of [
      [colours.paper, 4.5],
      [colours.ink, 2],
    ] as const) {
      brush.strokeStyle = colour
      brush.lineWidth = wide * ratio
      brush.stroke(lines)
      brush.stroke(box)
    }
  }
}

/** What is selected: its rows washed over, its box dashed. */
export function selectionLayer(lattice: Lattice, { from, to }: Stroke): OverlayLayer {
  return (paint) => {
    const { brush, ratio, colours } = paint
    const corner = cellBox(
      lattice,
      { row: Math.min(from.row, to.row), at: Math.min(from.at, to.at) },
      paint,
    )
    const far = cellBox(
      lattice,
      { row: Math.max(from.row, to.row), at: Math.max(from.at, to.at) },
      paint,
    )
    const width = far.left + far.width - corner.left
    const height = far.top + far.height - corner.top
    brush.globalAlpha = 0.18
    brush.fillStyle = colours.tide
    brush.fillRect(corner.left, corner.top, width, height)
    brush.globalAlpha = 1
    for (const [colour, dash, wide] of [
      [colours.paper, [], 4],
      [colours.tide, [6 * ratio, 4 * ratio], 2],
    ] as const) {
      brush.strokeStyle = colour
      brush.lineWidth = wide * ratio
      brush.setLineDash([...dash])
      brush.strokeRect(corner.left, corner.top, width, height)
    }
    brush.setLineDash([])
  }
}

/** The axes of the mirror, through the middle of what they mirror; in mm of the picture. */
export function mirrorLayer(
  axes: Readonly<{ xMm?: number | undefined; yMm?: number | undefined }>,
): OverlayLayer {
  return ({ brush, x, y, ratio, colours }) => {
    const path = new Path2D()
    const { width, height } = brush.canvas
    if (axes.xMm !== undefined) {
      path.moveTo(x(axes.xMm), 0)
      path.lineTo(x(axes.xMm), height)
    }
    if (axes.yMm !== undefined) {
      path.moveTo(0, y(axes.yMm))
      path.lineTo(width, y(axes.yMm))
    }
    brush.lineWidth = 2 * ratio
    brush.setLineDash([10 * ratio, 5 * ratio])
    brush.strokeStyle = colours.tide
    brush.stroke(path)
    brush.setLineDash([])
  }
}

function cellBox(lattice: Lattice, cell: CellRef, { view, x, y }: OverlayPaint) {
  const { row, at } = plus(cell, lattice.origin)
  const { xMm, yMm } = cellCentre(lattice.pitch, row, at)
  const box = beadBox(lattice.pitch, row)
  const [width, height] = [box.widthMm * view.scale, box.heightMm * view.scale]
  return { left: x(xMm) - width / 2, top: y(yMm) - height / 2, width, height }
}
