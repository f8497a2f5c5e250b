import { type PointerEvent, type RefObject, useMemo } from 'react'
import type { CellRef } from '../../../../shared-core/chart/chart.ts'
import { cellAtPoint } from '../../../../shared-core/chart/layout.ts'
import { parity, rowPhases } from '../../../../shared-core/chart/row-phase.ts'
import type { PictureHandle } from '../../../drawing/use-picture.ts'
import type { PictureTool, PointMm } from '../../../drawing/use-picture-input.ts'
import { minus, nearChart, plus } from './cells.ts'
import { bringNear, isTooFar } from './keep-in-sight.ts'
import type { Lattice } from './lattice.ts'
import type { TableModel } from './table-model.ts'
import type { ToolName } from './tools.ts'

/** The other end of a pen, as the system tells of it. */
const ERASER = 5
const ERASER_HELD = 32

type PointerToolInput = Readonly<{
  model: TableModel
  tool: ToolName
  lattice: Lattice
  picture: RefObject<PictureHandle | null>
  /** The cell under a pointer that draws nothing. */
  onHover: (cell: CellRef) => void
}>

/** The chosen tool under mouse and pen: every point between two frames is drawn, so that no bead is left out. */
export function usePointerTool({
  model,
  tool,
  lattice,
  picture,
  onHover,
}: PointerToolInput): PictureTool | undefined {
  return useMemo(() => {
    if (tool === 'move-picture') return undefined
    const at = (point: PointMm) => cellUnder(model, lattice, point)
    return {
      cursor: tool === 'pick' ? 'copy' : tool === 'select' ? 'cell' : 'crosshair',
      onDown: (point, { button }) => {
        const drawn = button === ERASER ? 'erase' : tool
        if (picture.current === null || !isTooFar(picture.current)) {
          model.down(at(point), false, drawn)
        } else {
          bringNear(picture.current, lattice, nearestRow(model, at(point)))
          model.tell('Too far away to draw, so it was brought nearer')
        }
      },
      onMove: (point, event) => {
        if ((event.buttons & (1 | ERASER_HELD)) === 0) onHover(at(point))
        else model.to(pointsOf(event, picture.current).map(at))
      },
      onUp: () => model.up(),
    }
  }, [model, tool, lattice, picture, onHover])
}

/** All points a pen or mouse has passed since the last frame. */
function pointsOf(
  { nativeEvent }: PointerEvent,
  picture: PictureHandle | null,
): readonly PointMm[] {
  if (picture === null) return []
  const passed = nativeEvent.getCoalescedEvents?.() ?? []
  return (passed.length === 0 ? [nativeEvent] : passed).map((event) => picture.pointAt(event))
}

/** The table's cell under a point of the picture, snapped as the stitch wants it. */
function cellUnder(model: TableModel, lattice: Lattice, point: PointMm): CellRef {
  const { chart, moved } = model.view()
  const { origin, pitch, rows } = lattice
  const phaseOf = rowPhases(chart)
  const placePhase = (row: number): number => {
    const place = rows[row]
    if (place !== undefined && place.length > 0) return parity(place.start)
    return parity(phaseOf(row - origin.row + moved.row) + origin.at - moved.at)
  }
  return minus(cellAtPoint(pitch, point, placePhase), origin)
}

/** A cell in the chart or close to it, where the pointer is far from all beads. */
function nearestRow(model: TableModel, cell: CellRef): CellRef {
  const { chart, moved } = model.view()
  return minus(nearChart(chart, plus(cell, moved)), moved)
}
