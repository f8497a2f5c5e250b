import type { OverlayLayer } from '../overlay.ts'

/**
 * The thread's way over the beads: a line with its last stretch lit and the needle at its end.
 *
 * @param points - x and y in mm, alternating, in the order the needle goes.
 * @param upTo - How many points have been reached; all of them when absent.
 */
export function routeLayer(points: Float32Array, upTo = points.length / 2): OverlayLayer {
  const LIT_POINTS = 8
  return ({ brush, x, y, ratio, colours }) => {
    const end = Math.min(upTo, points.length / 2)
    const trace = (from: number, to: number) => {
      brush.beginPath()
      for (let i = from; i < to; i += 1) {
        brush.lineTo(x(points[2 * i] ?? 0), y(points[2 * i + 1] ?? 0))
      }
      brush.stroke()
    }
    brush.lineCap = 'round'
    brush.lineJoin = 'round'
    brush.strokeStyle = colours.paper
    brush.lineWidth = 4 * ratio
    trace(0, end)
    brush.strokeStyle = colours.ink
    brush.lineWidth = 2 * ratio
    trace(0, end)
    brush.strokeStyle = colours.lamp
    brush.lineWidth = 3 * ratio
    trace(Math.max(0, end - LIT_POINTS), end)
    if (end === 0) return
    brush.fillStyle = colours.lamp
    brush.strokeStyle = colours.ink
    brush.lineWidth = 1.5 * ratio
    brush.beginPath()
    brush.arc(x(points[2 * end - 2] ?? 0), y(points[2 * end - 1] ?? 0), 5 * ratio, 0, 2 * Math.PI)
    brush.fill()
    brush.stroke()
  }
}
