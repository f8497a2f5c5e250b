import { type RouteLine, THROUGH } from '../../../../shared-core/route/route-line.ts'

/** A route's line as it is drawn: passes through one hole lie side by side, so that each can be told. */
export type ThreadPath = Readonly<{ line: RouteLine; xMm: Float32Array; yMm: Float32Array }>

/** How far apart two passes are drawn, in thicknesses of the thread. */
const APART = 1.5

/** Sets the passes through each hole side by side: the first in the middle, the others by turns at its sides. */
export function threadPath(line: RouteLine, threadMm: number): ThreadPath {
  const xMm = line.xMm.slice()
  const yMm = line.yMm.slice()
  for (let at = 1; at < line.count; at += 1) {
    if (line.comesBy[at] !== THROUGH) continue
    const aside = lane(line.passOf[at] ?? 0) * APART * threadMm
    if (aside === 0) continue
    const across = acrossOf(line, at)
    for (const point of [at - 1, at]) {
      xMm[point] = (xMm[point] ?? 0) + aside * across.x
      yMm[point] = (yMm[point] ?? 0) + aside * across.y
    }
  }
  return { line, xMm, yMm }
}

/** 0, 1, -1, 2, -2 ... for the first pass, the second and so on. */
export function lane(pass: number): number {
  return pass % 2 === 1 ? (pass + 1) / 2 : -pass / 2 || 0
}

/** The unit vector across a stretch, the same whichever way the thread runs through it. */
function acrossOf({ xMm, yMm }: RouteLine, at: number): Readonly<{ x: number; y: number }> {
  const dx = (xMm[at] ?? 0) - (xMm[at - 1] ?? 0)
  const dy = (yMm[at] ?? 0) - (yMm[at - 1] ?? 0)
  const length = Math.hypot(dx, dy) || 1
  const turn = dy < 0 || (dy === 0 && dx < 0) ? -1 : 1
  return { x: (turn * dy) / length, y: (-turn * dx) / length }
}
