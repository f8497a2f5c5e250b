import type { OverlayLayer } from '../../../drawing/overlay.ts'

/** A frame round some beads, so that they are found in a small picture and keep their colours. */
export function boxLayer(beads: readonly number[]): OverlayLayer {
  return ({ brush, scene, view, x, y, ratio, colours }) => {
    if (beads.length === 0) return
    const across = beads.map((bead) => x(scene.xMm[bead] ?? 0))
    const down = beads.map((bead) => y(scene.yMm[bead] ?? 0))
    const [halfWide, halfHigh] = [scene.beadWidthMm, scene.beadHeightMm].map(
      (mm) => (mm * view.scale) / 2 + 3 * ratio,
    ) as [number, number]
    const [left, top] = [Math.min(...across) - halfWide, Math.min(...down) - halfHigh]
    const [right, bottom] = [Math.max(...across) + halfWide, Math.max(...down) + halfHigh]
    const frame = new Path2D()
    frame.roundRect(left, top, right - left, bottom - top, 4 * ratio)
    brush.lineWidth = 5 * ratio
    brush.strokeStyle = colours.tray
    brush.stroke(frame)
    brush.lineWidth = 2.5 * ratio
    brush.strokeStyle = colours.tide
    brush.stroke(frame)
  }
}
