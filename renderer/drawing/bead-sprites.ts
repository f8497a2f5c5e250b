import type { BeadLook, HoleAxis } from './bead-look.ts'
import { beadOutline } from './bead-outline.ts'
import { paintBead } from './paint-bead.ts'

/** A bead painted once, to be stamped many times. `pad` is the room round it that its shadow needs. */
export type Sprite = Readonly<{ image: OffscreenCanvas; pad: number }>

type SpriteSize = Readonly<{ width: number; height: number; axis: HoleAxis; lean?: number }>

/** Enough for every slot of a large palette at a few sizes; then all are dropped and painted anew. */
const MOST_KEPT = 1_500
const sprites = new Map<string, Sprite>()

/** The sprite of a bead at a size in whole pixels; painted at the first asking. */
export function beadSprite(look: BeadLook, size: SpriteSize): Sprite {
  const lean = size.lean ?? 0
  const key = `${look.hex}${look.finish}${look.family}${size.width}x${size.height}${size.axis}${lean}`
  let sprite = sprites.get(key)
  if (sprite === undefined) {
    if (sprites.size >= MOST_KEPT) sprites.clear()
    sprite = paintSprite(look, size, lean)
    sprites.set(key, sprite)
  }
  return sprite
}

function paintSprite(look: BeadLook, { width, height, axis }: SpriteSize, lean: number): Sprite {
  const short = Math.min(width, height)
  // A leaning bead needs room for its corners.
  const pad =
    Math.ceil(short * 0.14) + 1 + (lean === 0 ? 0 : Math.ceil(Math.max(width, height) * 0.25))
  const image = new OffscreenCanvas(width + 2 * pad, height + 2 * pad)
  const brush = image.getContext('2d')
  if (brush === null) return { image, pad }
  // A hair of room on every side, through which the thread between beads is seen.
  const inset = short * 0.02
  const box = {
    x: pad + inset,
    y: pad + inset,
    width: width - 2 * inset,
    height: height - 2 * inset,
  }
  if (lean !== 0) {
    brush.translate(image.width / 2, image.height / 2)
    brush.rotate(lean)
    brush.translate(-image.width / 2, -image.height / 2)
  }
  castShadow(brush, beadOutline(look.family, box, axis), short)
  paintBead(brush, look, box, axis)
  return { image, pad }
}

function castShadow(
  brush: OffscreenCanvasRenderingContext2D,
  outline: Path2D,
  short: number,
): void {
  brush.save()
  brush.shadowColor = 'rgb(8 18 22 / 0.45)'
  brush.shadowBlur = short * 0.1
  brush.shadowOffsetX = short * 0.045
  brush.shadowOffsetY = short * 0.055
  brush.fillStyle = 'rgb(20 30 34)'
  brush.fill(outline)
  brush.restore()
}
