import type { OverlayLayer } from '../../../drawing/overlay.ts'

/** Beads smaller than this on the screen are not veiled one by one. */
const LEAST_PX = 3

/**
 * Lays a veil over beads that are not in the work yet, so that the piece grows as it is played.
 *
 * @param pickedAt - The event that picks up each bead of the scene; -1 for beads of other parts.
 * @param event - The last event done.
 */
export function unpickedLayer(pickedAt: Int32Array, event: number): OverlayLayer {
  return ({ brush, scene, grid, seen, view, x, y, ratio, colours }) => {
    const { beadWidthMm, beadHeightMm } = scene
    if (Math.min(beadWidthMm, beadHeightMm) * view.scale < LEAST_PX * ratio) return
    const path = new Path2D()
    grid.forEachIn(seen, (bead) => {
      if ((pickedAt[bead] ?? -1) <= event) return
      const isTurned = scene.turnedOf?.[bead] === 1
      const width = 1.12 * (isTurned ? beadHeightMm : beadWidthMm) * view.scale
      const height = 1.12 * (isTurned ? beadWidthMm : beadHeightMm) * view.scale
      const [cx, cy] = [x(scene.xMm[bead] ?? 0), y(scene.yMm[bead] ?? 0)]
      const lean = scene.leanOf?.[bead] ?? 0
      if (lean === 0) path.rect(cx - width / 2, cy - height / 2, width, height)
      else
        path.addPath(
          leaning(width, height),
          new DOMMatrix().translate(cx, cy).rotate((lean * 180) / Math.PI),
        )
    })
    brush.save()
    brush.globalAlpha = 0.74
    brush.fillStyle = colours.paper
    brush.fill(path)
    brush.restore()
  }
}

function leaning(width: number, height: number): Path2D {
  const path = new Path2D()
  path.rect(-width / 2, -height / 2, width, height)
  return path
}
