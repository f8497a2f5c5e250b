import { beadBoxes } from './bead-boxes.ts'
import type { BeadGrid, BoxMm } from './bead-grid.ts'
import type { Brush } from './bead-look.ts'
import type { BeadScene } from './bead-scene.ts'
import { beadSprite, type Sprite } from './bead-sprites.ts'
import { outlinePlaces } from './outline-places.ts'
import { paintThreads } from './paint-threads.ts'

/**
 * A part of the work to paint: its box in mm, pixels a mm, and which pixel of the whole work lies at
 * the canvas's left top. Beads fall on the same pixels of the work whichever part is painted.
 */
export type Region = Readonly<{
  box: BoxMm
  leftPx: number
  topPx: number
  scale: number
  /** What empty places are outlined with, where the scene shows them. */
  placeInk?: string
}>

/** Shorter side in pixels from which beads are stamped as sprites; below they are plain colour. */
export const SPRITES_FROM_PX = 6
/** From this size the thread between beads can be seen. */
const THREADS_FROM_PX = 10

/** Paints the beads of a region as sprites: threads first, then beads from the top left, so that shadows fall right. */
export function paintRegion(brush: Brush, scene: BeadScene, grid: BeadGrid, region: Region): void {
  const { scale, leftPx, topPx } = region
  const short = Math.min(scene.beadWidthMm, scene.beadHeightMm) * scale
  if (short >= THREADS_FROM_PX) paintThreads(brush, scene, grid, region)
  if (scene.showsPlaces === true) outlinePlaces(brush, scene, grid, region)
  const spriteOf = sceneSprites(scene, scale)
  grid.forEachIn(region.box, (bead) => {
    const sprite = spriteOf(bead)
    if (sprite === undefined) return
    const { image, pad, left, top } = sprite
    brush.drawImage(image, left - leftPx - pad, top - topPx - pad)
  })
}

/** A bead's sprite and its left top in whole pixels of the work. */
type PlacedSprite = Sprite & Readonly<{ left: number; top: number }>

/** The sprite of each bead of a scene at a scale, painted where it is not at hand; `undefined` for an empty place. */
export function sceneSprites(
  scene: BeadScene,
  scale: number,
): (bead: number) => PlacedSprite | undefined {
  const turnedAxis = scene.axis === 'vertical' ? 'horizontal' : 'vertical'
  const boxOf = beadBoxes(scene, scale)
  return (bead) => {
    const look = scene.palette[scene.slotOf[bead] ?? 0]
    if (look === undefined) return undefined
    const { left, top, right, bottom } = boxOf(bead)
    const { image, pad } = beadSprite(look, {
      width: Math.max(1, right - left),
      height: Math.max(1, bottom - top),
      axis: scene.turnedOf?.[bead] === 1 ? turnedAxis : scene.axis,
      lean: scene.leanOf?.[bead] ?? 0,
    })
    return { image, pad, left, top }
  }
}
