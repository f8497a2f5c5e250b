import type { OverlayLayer } from '../../../drawing/overlay.ts'

/** An arrow beside the first bead that shows which way the row is worked. */
export function wayLayer(first: number, fromRight: boolean): OverlayLayer {
  return ({ brush, scene, view, x, y, ratio, colours }) => {
    const way = fromRight ? -1 : 1
    const px = scene.beadWidthMm * view.scale
    const size = Math.min(26 * ratio, Math.max(10 * ratio, px * 0.5))
    const tip = x(scene.xMm[first] ?? 0) - way * (px / 2 + 6 * ratio)
    const cy = y(scene.yMm[first] ?? 0)
    brush.beginPath()
    brush.moveTo(tip, cy)
    brush.lineTo(tip - way * size, cy - size * 0.7)
    brush.lineTo(tip - way * size, cy + size * 0.7)
    brush.closePath()
    brush.fillStyle = colours.lamp
    brush.fill()
    brush.lineWidth = 2 * ratio
    brush.strokeStyle = colours.ink
    brush.stroke()
  }
}
