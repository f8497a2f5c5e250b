import type { BeadGrid } from './bead-grid.ts'
import type { Brush } from './bead-look.ts'
import type { BeadScene } from './bead-scene.ts'
import type { Region } from './paint-region.ts'
import { screenRatio } from './screen-ratio.ts'

/** A place this small on the screen needs no outline; pixels of the page. */
const SHOWN_FROM_PX = 9
/** What of a place its outline takes up. */
const SHARE = 0.72

/** Outlines the places without a bead, where the stitch would take one. */
export function outlinePlaces(
  brush: Brush,
  scene: BeadScene,
  grid: BeadGrid,
  { box, leftPx, topPx, scale, placeInk = '' }: Region,
): void {
  const ratio = screenRatio()
  const { xMm, yMm, slotOf, palette, turnedOf, beadWidthMm, beadHeightMm } = scene
  if (Math.min(beadWidthMm, beadHeightMm) * scale < SHOWN_FROM_PX * ratio) return
  const path = new Path2D()
  grid.forEachIn(box, (place) => {
    if (palette[slotOf[place] ?? 0] !== undefined) return
    const isTurned = turnedOf?.[place] === 1
    const width = (isTurned ? beadHeightMm : beadWidthMm) * scale * SHARE
    const height = (isTurned ? beadWidthMm : beadHeightMm) * scale * SHARE
    path.roundRect(
      (xMm[place] ?? 0) * scale - leftPx - width / 2,
      (yMm[place] ?? 0) * scale - topPx - height / 2,
      width,
      height,
      Math.min(width, height) * 0.25,
    )
  })
  brush.globalAlpha = 0.22
  brush.lineWidth = ratio
  brush.strokeStyle = placeInk
  brush.stroke(path)
  brush.globalAlpha = 1
}
