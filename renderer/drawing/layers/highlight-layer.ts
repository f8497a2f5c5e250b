import { addBox } from '../box-path.ts'
import type { OverlayLayer } from '../overlay.ts'

/**
 * Rings round beads a warning speaks of, or that are chosen.
 *
 * @param beads - Bead numbers.
 * @param kind - `choose` a tide ring, `warn` a dashed one in the colour of trouble.
 */
export function highlightLayer(
  beads: Iterable<number>,
  kind: 'choose' | 'warn' = 'choose',
): OverlayLayer {
  const chosen = [...beads]
  return ({ brush, scene, view, seen, x, y, ratio, colours }) => {
    const path = new Path2D()
    for (const bead of chosen) {
      const [xMm, yMm] = [scene.xMm[bead] ?? 0, scene.yMm[bead] ?? 0]
      if (xMm < seen.left || xMm > seen.right || yMm < seen.top || yMm > seen.bottom) continue
      const isTurned = scene.turnedOf?.[bead] === 1
      const width = (isTurned ? scene.beadHeightMm : scene.beadWidthMm) * view.scale
      const height = (isTurned ? scene.beadWidthMm : scene.beadHeightMm) * view.scale
      const corner = Math.min(width, height) * 0.2
      const lean = scene.leanOf?.[bead] ?? 0
      addBox(path, { x: x(xMm), y: y(yMm), width, height, corner, lean })
    }
    brush.lineWidth = 5 * ratio
    brush.strokeStyle = colours.paper
    brush.stroke(path)
    brush.lineWidth = 2.5 * ratio
    brush.setLineDash(kind === 'warn' ? [5 * ratio, 3 * ratio] : [])
    brush.strokeStyle = kind === 'warn' ? colours.bad : colours.tide
    brush.stroke(path)
    brush.setLineDash([])
  }
}
