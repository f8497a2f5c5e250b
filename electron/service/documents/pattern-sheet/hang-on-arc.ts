import { leanOf, loopArc } from '../../../../shared-core/stitches/strand/loop-arc.ts'

/** A place on the page and the way the thread goes there, radians clockwise from upwards. */
export type ThreadPlace = Readonly<{ xMm: number; yMm: number; turnRad: number }>

/**
 * Places along a loop of thread that bulges up from one point to another on the same level (or down
 * for `side` 1): an arc of a circle as long as the thread.
 *
 * @param alongMm - Distances along the thread.
 */
export function hangOnArc(
  span: Readonly<{ fromX: number; toX: number; yMm: number; lengthMm: number; side: -1 | 1 }>,
  alongMm: readonly number[],
): readonly ThreadPlace[] {
  const { fromX, toX, yMm, lengthMm, side } = span
  const to = { x: Math.max(toX, fromX + 1e-3), y: yMm }
  const curve = loopArc({ x: fromX, y: yMm }, to, lengthMm, { x: 0, y: side })
  return alongMm.map((mm) => {
    const { at, way } = curve(mm)
    return { xMm: at.x, yMm: at.y, turnRad: leanOf(way) }
  })
}
