import { addBox } from '../../../drawing/box-path.ts'
import type { OverlayLayer } from '../../../drawing/overlay.ts'

/** How far each bead is faded: not at all, behind the row in hand, not made yet. */
export const CLEAR = 0
export const BEHIND = 1
export const TO_COME = 2

const STRENGTH = [0, 0.4, 0.82] as const

/** Fades beads into the tray by their level. */
export function washLayer(levels: Uint8Array): OverlayLayer {
  return ({ brush, scene, view, seen, grid, x, y, colours }) => {
    const paths = [undefined, new Path2D(), new Path2D()] as const
    const reach = 1.06
    grid.forEachIn(seen, (bead) => {
      const path = paths[levels[bead] ?? CLEAR]
      if (path === undefined) return
      const box = scene.boxOfSlot?.[scene.slotOf[bead] ?? 0]
      const wide = box?.widthMm ?? scene.beadWidthMm
      const high = box?.heightMm ?? scene.beadHeightMm
      const isTurned = scene.turnedOf?.[bead] === 1
      const width = (isTurned ? high : wide) * view.scale * reach
      const height = (isTurned ? wide : high) * view.scale * reach
      const [cx, cy] = [x(scene.xMm[bead] ?? 0), y(scene.yMm[bead] ?? 0)]
      const lean = scene.leanOf?.[bead] ?? 0
      // Straight boxes are by far the most, and much the quicker to trace.
      if (lean === 0) path.rect(cx - width / 2, cy - height / 2, width, height)
      else addBox(path, { x: cx, y: cy, width, height, corner: 0, lean })
    })
    brush.fillStyle = colours.tray
    for (const level of [BEHIND, TO_COME] as const) {
      brush.globalAlpha = STRENGTH[level]
      const path = paths[level]
      if (path !== undefined) brush.fill(path)
    }
    brush.globalAlpha = 1
  }
}
