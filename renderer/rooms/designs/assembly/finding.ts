import { pathText } from '../../../../shared-core/colour/path-step.ts'
import {
  findingOutline,
  type PlacedFinding,
  WIRE_MM,
} from '../../../../shared-core/design/assembly/placed-finding.ts'
import { leanOf } from '../../../../shared-core/stitches/strand/loop-arc.ts'
import type { OverlayLayer } from '../../../drawing/overlay.ts'

/** Silver, seen on the trays of both themes. */
const [EDGE, METAL] = ['#5f676a', '#c6cccd']

type Place = Readonly<{ x: (mm: number) => number; y: (mm: number) => number; scale: number }>

/** Draws findings over beads; places come in mm and are turned into pixels by `place`. */
export function paintFindings(
  brush: CanvasRenderingContext2D,
  findings: readonly PlacedFinding[],
  { x, y, scale }: Place,
): void {
  for (const finding of findings) {
    const { at, way } = finding
    const { outline, isSolid } = findingOutline(finding)
    const path = new Path2D(pathText(outline))
    brush.save()
    brush.translate(x(at.x), y(at.y))
    brush.rotate(leanOf(way))
    brush.scale(scale, scale)
    brush.lineCap = 'round'
    brush.lineWidth = isSolid ? 0.35 : WIRE_MM + 0.35
    brush.strokeStyle = EDGE
    brush.stroke(path)
    paintMetal(brush, path, isSolid)
    brush.restore()
  }
}

function paintMetal(brush: CanvasRenderingContext2D, path: Path2D, isSolid: boolean): void {
  brush.lineWidth = WIRE_MM - 0.2
  brush.strokeStyle = METAL
  brush.fillStyle = METAL
  if (isSolid) brush.fill(path)
  else brush.stroke(path)
}

/** The same as a layer over a picture. */
export function findingLayer(findings: readonly PlacedFinding[]): OverlayLayer {
  return ({ brush, x, y, view }) => paintFindings(brush, findings, { x, y, scale: view.scale })
}
