import { BEGINS } from '../../../../shared-core/route/route-line.ts'
import type { OverlayLayer, OverlayPaint } from '../../../drawing/overlay.ts'
import type { ThreadPath } from './thread-path.ts'

/** Natural thread with a dark edge: seen on every bead, by day and by lamplight. */
const THREAD = 'rgb(250 245 230)'
const EDGE = 'rgb(24 32 36)'
const STEEL = 'rgb(226 231 233)'
/** Points drawn at most, back from the needle: more are never told apart. */
const MOST_POINTS = 40_000
const NEEDLE_PX = 30

type ThreadShown = Readonly<{
  path: ThreadPath
  threadMm: number
  /** Points laid, the last in part. */
  reach: number
  /** The first point of the step that is being made. */
  litFrom: number
}>

/** The thread over the beads, the step being made lit, the needle at its end. */
export function threadLayer({ path, threadMm, reach, litFrom }: ThreadShown): OverlayLayer {
  return (paint) => {
    const { brush, view, ratio, colours } = paint
    const wide = Math.min(9 * ratio, Math.max(1.2 * ratio, 0.9 * threadMm * view.scale))
    const edge = wide + Math.max(1.1 * ratio, wide * 0.4)
    brush.lineCap = 'round'
    brush.lineJoin = 'round'
    const from = Math.max(0, Math.floor(reach) - MOST_POINTS)
    const laid = traced(paint, path, from, reach)
    stroke(brush, laid, EDGE, edge)
    stroke(brush, laid, THREAD, wide)
    const lit = traced(paint, path, Math.max(from, litFrom), reach)
    stroke(brush, lit, EDGE, edge + 1.2 * ratio)
    stroke(brush, lit, colours.lamp, wide + 1.2 * ratio)
    paintNeedle(paint, path, reach)
  }
}

function stroke(brush: CanvasRenderingContext2D, path: Path2D, style: string, width: number): void {
  brush.strokeStyle = style
  brush.lineWidth = width
  brush.stroke(path)
}

function traced(
  { x, y, seen }: OverlayPaint,
  { line, xMm, yMm }: ThreadPath,
  from: number,
  reach: number,
): Path2D {
  const path = new Path2D()
  const whole = Math.min(line.count, Math.floor(reach))
  let isDown = false
  for (let at = from; at < whole; at += 1) {
    const [px, py] = [xMm[at] ?? 0, yMm[at] ?? 0]
    const begins = at === from || line.comesBy[at] === BEGINS
    const [bx, by] = [xMm[at - 1] ?? px, yMm[at - 1] ?? py]
    // A stretch is left out only when both its ends lie beyond the same side of what is seen.
    const isUnseen =
      (px < seen.left && bx < seen.left) ||
      (px > seen.right && bx > seen.right) ||
      (py < seen.top && by < seen.top) ||
      (py > seen.bottom && by > seen.bottom)
    if (begins || isUnseen) {
      isDown = false
    } else {
      if (!isDown) path.moveTo(x(bx), y(by))
      path.lineTo(x(px), y(py))
      isDown = true
    }
  }
  const share = reach - whole
  if (share > 0 && whole > 0 && whole < line.count && line.comesBy[whole] !== BEGINS) {
    const tip = tipOf({ line, xMm, yMm }, reach)
    path.moveTo(x(xMm[whole - 1] ?? 0), y(yMm[whole - 1] ?? 0))
    path.lineTo(x(tip.x), y(tip.y))
  }
  return path
}

/** Where the needle's end of the thread is, and which way it goes. */
function tipOf({ line, xMm, yMm }: ThreadPath, reach: number) {
  const whole = Math.min(line.count, Math.floor(reach))
  const share = Math.min(1, reach - whole)
  const last = share > 0 && line.comesBy[whole] !== BEGINS ? whole : whole - 1
  const before = line.comesBy[last] === BEGINS ? last : last - 1
  const [x1, y1] = [xMm[before] ?? 0, yMm[before] ?? 0]
  const [x2, y2] = [xMm[last] ?? 0, yMm[last] ?? 0]
  const part = last === whole ? share : 1
  return { x: x1 + (x2 - x1) * part, y: y1 + (y2 - y1) * part, angle: Math.atan2(y2 - y1, x2 - x1) }
}

function paintNeedle({ brush, x, y, ratio }: OverlayPaint, path: ThreadPath, reach: number): void {
  if (reach <= 0 || path.line.count === 0) return
  const tip = tipOf(path, reach)
  const [long, half] = [NEEDLE_PX * ratio, 2.2 * ratio]
  brush.save()
  brush.translate(x(tip.x), y(tip.y))
  brush.rotate(tip.angle)
  brush.beginPath()
  brush.moveTo(-2 * ratio, 0)
  brush.quadraticCurveTo(0, -half, 6 * ratio, -half)
  brush.lineTo(long, 0)
  brush.lineTo(6 * ratio, half)
  brush.quadraticCurveTo(0, half, -2 * ratio, 0)
  brush.closePath()
  brush.lineWidth = 2.4 * ratio
  brush.strokeStyle = EDGE
  brush.stroke()
  brush.fillStyle = STEEL
  brush.fill()
  brush.beginPath()
  brush.ellipse(4.5 * ratio, 0, 2.6 * ratio, 0.9 * ratio, 0, 0, 2 * Math.PI)
  brush.fillStyle = EDGE
  brush.fill()
  brush.restore()
}
