import {
  ellipse,
  type PathStep,
  placedOutline,
  QUARTER,
  roundedBox,
} from '../../colour/path-step.ts'
import { leanOf } from '../../stitches/strand/loop-arc.ts'
import type { PointMm } from '../../stitches/strand/point-mm.ts'

/** Shapes that findings are drawn in: a ring, an ear hook on its ring, a bar along an end of the work. */
export type FindingShape = 'ring' | 'hook' | 'bar'

/** A finding as a simple shape: where the work holds it, and the way it points from there. */
export type PlacedFinding = Readonly<{
  at: PointMm
  /** A unit vector away from the work. */
  way: PointMm
  shape: FindingShape
  /** How far a bar reaches along the work, mm; 0 for the other shapes. */
  acrossMm: number
}>

/** Sizes in mm of what is drawn. @source Chosen by us: usual sizes of jump rings, ear wires and slide clasps. */
const RING_MM = 3
const HOOK_MM = 14
const BEND_MM = 3.2
const BAR_MM = 2.4
/** How far a bar reaches beyond the work on each side, mm. */
const BEYOND_MM = 0.4
/** Thickness of the wire that rings and hooks are drawn with, mm. */
export const WIRE_MM = 0.8

/** The shape a finding that hangs is drawn in, told by its name: a hook for ear wires, else a ring. */
export function shapeOfFinding(name: string): FindingShape {
  return isHook(name) ? 'hook' : 'ring'
}

/** Whether a name tells of an ear wire or a hook. */
export function isHook(name: string): boolean {
  return /\b(ear ?wire|hook)s?\b/i.test(name)
}

/**
 * The lines of a finding in mm round the point where it is held, before it is turned: it points up.
 *
 * @returns The outline, and whether it is filled metal rather than a wire along the line.
 */
export function findingOutline({ shape, acrossMm }: PlacedFinding): Readonly<{
  outline: readonly PathStep[]
  isSolid: boolean
}> {
  if (shape === 'bar') {
    const bar = roundedBox(acrossMm + 2 * BEYOND_MM, BAR_MM, BAR_MM / 3)
    return { outline: placedOutline(bar, { scale: 1, toY: -BAR_MM / 2 }), isSolid: true }
  }
  const radius = RING_MM / 2
  const ring = ellipse({ x: 0, y: -radius, radiusX: radius, radiusY: radius })
  return { outline: shape === 'hook' ? [...ring, ...hookLine()] : ring, isSolid: false }
}

/** A wire that rises from its ring, turns over and hangs down behind, its end bent away a little, mm. */
function hookLine(): readonly PathStep[] {
  const [top, side, control] = [-HOOK_MM, BEND_MM, BEND_MM * QUARTER]
  const bend = top + BEND_MM
  return [
    ['M', 0, -RING_MM],
    ['L', 0, bend],
    ['C', 0, bend - control, side - control, top, side, top],
    ['C', side + control, top, 2 * side, bend - control, 2 * side, bend],
    ['C', 2 * side, -7.9, 2 * side + 0.3, -5.6, 2 * side + 1, -4.2],
  ]
}

/** The corners of the box that holds a finding where it is placed, mm; its wire included. */
export function findingCorners(finding: PlacedFinding): readonly PointMm[] {
  const { at, way } = finding
  const [left, right, top] = reachOf(finding)
  const turn = leanOf(way)
  const [sine, cosine] = [Math.sin(turn), Math.cos(turn)]
  return [
    [left, 0],
    [right, 0],
    [left, top],
    [right, top],
  ].map(([x = 0, y = 0]) => ({ x: at.x + x * cosine - y * sine, y: at.y + x * sine + y * cosine }))
}

/** Left, right and top of a finding that points up from 0, mm. */
function reachOf({ shape, acrossMm }: PlacedFinding): readonly [number, number, number] {
  const wire = WIRE_MM / 2
  if (shape === 'bar') return [-acrossMm / 2 - BEYOND_MM, acrossMm / 2 + BEYOND_MM, -BAR_MM]
  const ring = RING_MM / 2 + wire
  if (shape === 'ring') return [-ring, ring, -RING_MM - wire]
  return [-ring, 2 * BEND_MM + 1 + wire, -HOOK_MM - wire]
}
