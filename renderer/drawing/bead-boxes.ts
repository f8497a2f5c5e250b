import type { BoxMm } from './bead-grid.ts'
import type { BeadScene } from './bead-scene.ts'

/** A gap of thread thinner than this would show between some rows and not between others. */
const GAP_FROM_PX = 1.5
/** What places lose in 32 bits: edges of beads that touch must not fall on two sides of a half pixel. */
const HAIR_PX = 0.002

/** Edges of a bead in whole pixels of the work. */
export type BoxPx = BoxMm

/**
 * Where each bead lies in whole pixels of the work. Edges are rounded and not middles, so that beads
 * which touch leave no line between them; a gap of thread too thin to be drawn evenly is closed.
 */
export function beadBoxes(scene: BeadScene, scale: number): (bead: number) => BoxPx {
  const { xMm, yMm, slotOf, turnedOf, boxOfSlot, beadWidthMm, beadHeightMm } = scene
  const gap = (scene.gapMm ?? 0) * scale < GAP_FROM_PX ? (scene.gapMm ?? 0) : 0
  const isUpright = scene.axis === 'vertical'
  return (bead) => {
    const box = boxOfSlot?.[slotOf[bead] ?? 0]
    const wide = (box?.widthMm ?? beadWidthMm) + (isUpright ? 0 : gap)
    const tall = (box?.heightMm ?? beadHeightMm) + (isUpright ? gap : 0)
    const isTurned = turnedOf?.[bead] === 1
    const [halfX, halfY] = isTurned ? [tall / 2, wide / 2] : [wide / 2, tall / 2]
    const [x, y] = [xMm[bead] ?? 0, yMm[bead] ?? 0]
    return {
      left: Math.round((x - halfX) * scale - HAIR_PX),
      top: Math.round((y - halfY) * scale - HAIR_PX),
      right: Math.round((x + halfX) * scale + HAIR_PX),
      bottom: Math.round((y + halfY) * scale + HAIR_PX),
    }
  }
}
