import { leanOf } from '../../../../shared-core/stitches/strand/loop-arc.ts'
import type { PointMm } from '../../../../shared-core/stitches/strand/point-mm.ts'
import type { OverlayLayer } from '../../../drawing/overlay.ts'

/** A finding that a strand carries, as a simple shape: where the thread holds it, and the way it points from there. */
export type PlacedFinding = Readonly<{
  at: PointMm
  /** A unit vector away from the work. */
  way: PointMm
  shape: 'ring' | 'hook'
}>

/** A ring's diameter and the height of an ear hook, mm. */
export const RING_MM = 3
export const HOOK_MM = 14
const WIRE_MM = 0.8
/** Silver, seen on the trays of both themes. */
const [EDGE, METAL] = ['#5f676a', '#c6cccd']

/** The shape that a finding's name tells. */
export function shapeOfFinding(name: string): PlacedFinding['shape'] {
  return /\b(ear ?wire|hook)s?\b/i.test(name) ? 'hook' : 'ring'
}

/** The farthest that a finding reaches from where it is held, mm. */
export function reachOfFinding({ shape }: PlacedFinding): number {
  return shape === 'hook' ? HOOK_MM + RING_MM : RING_MM + WIRE_MM
}

type Place = Readonly<{ x: (mm: number) => number; y: (mm: number) => number; scale: number }>

/** Draws findings over beads; places come in mm and are turned into pixels by `place`. */
export function paintFindings(
  brush: CanvasRenderingContext2D,
  findings: readonly PlacedFinding[],
  { x, y, scale }: Place,
): void {
  for (const { at, way, shape } of findings) {
    brush.save()
    brush.translate(x(at.x), y(at.y))
    brush.rotate(leanOf(way))
    brush.scale(scale, scale)
    const path = new Path2D()
    path.arc(0, -RING_MM / 2, RING_MM / 2, 0, 2 * Math.PI)
    if (shape === 'hook') addHook(path)
    brush.lineCap = 'round'
    brush.lineWidth = WIRE_MM + 0.35
    brush.strokeStyle = EDGE
    brush.stroke(path)
    brush.lineWidth = WIRE_MM - 0.2
    brush.strokeStyle = METAL
    brush.stroke(path)
    brush.restore()
  }
}

/** A wire that rises from its ring, turns over and hangs down behind. */
function addHook(path: Path2D): void {
  const half = 3.2
  path.moveTo(0, -RING_MM)
  path.lineTo(0, -HOOK_MM + half)
  path.arc(half, -HOOK_MM + half, half, Math.PI, 0)
  path.quadraticCurveTo(2 * half, -HOOK_MM * 0.45, 2 * half + 1, -HOOK_MM * 0.3)
}

/** The same as a layer over a picture. */
export function findingLayer(findings: readonly PlacedFinding[]): OverlayLayer {
  return ({ brush, x, y, view }) => paintFindings(brush, findings, { x, y, scale: view.scale })
}
