import type { BeadGrid } from './bead-grid.ts'
import type { BeadScene } from './bead-scene.ts'
import { shade } from './colour-shades.ts'
import type { Region } from './paint-region.ts'

/** From this size in pixels a seam is left between beads, so that they still read as beads. */
const SEAM_FROM_PX = 3

/** Colours of the palette as pixels: the bead itself, and its shaded edge. */
export type FarColours = Readonly<{ body: Uint32Array; edge: Uint32Array }>

/** Prepares the pixels of a palette once. */
export function farColours(palette: BeadScene['palette']): FarColours {
  return {
    body: Uint32Array.from(palette, ({ hex }) => pixelOf(hex)),
    edge: Uint32Array.from(palette, ({ hex }) => pixelOf(shade(hex, { l: -0.1 }))),
  }
}

/**
 * Writes beads far away straight into pixels as clean colour, about a hundred times faster than
 * stamping. Pixels row-major, `width` a row.
 */
export function paintFar(
  pixels: Uint32Array,
  width: number,
  scene: BeadScene,
  grid: BeadGrid,
  { box, leftPx, topPx, scale, colours }: Region & Readonly<{ colours: FarColours }>,
): void {
  const height = pixels.length / width
  const { xMm, yMm, slotOf, turnedOf } = scene
  const hasSeam = Math.min(scene.beadWidthMm, scene.beadHeightMm) * scale >= SEAM_FROM_PX
  const gap = scene.gapMm ?? 0
  const isUpright = scene.axis === 'vertical'
  const halfWide = ((scene.beadWidthMm + (isUpright ? 0 : gap)) * scale) / 2
  const halfTall = ((scene.beadHeightMm + (isUpright ? gap : 0)) * scale) / 2
  grid.forEachIn(box, (bead) => {
    const slot = slotOf[bead] ?? 0
    const body = colours.body[slot]
    // A place whose slot is not in the palette is empty.
    if (body === undefined) return
    const isTurned = turnedOf?.[bead] === 1
    const halfX = isTurned ? halfTall : halfWide
    const halfY = isTurned ? halfWide : halfTall
    // Rounded in the work and not in the part, so that a bead lies alike in all parts that hold some of it.
    const x = (xMm[bead] ?? 0) * scale
    const y = (yMm[bead] ?? 0) * scale
    const left = Math.round(x - halfX) - leftPx
    const top = Math.round(y - halfY) - topPx
    // A bead that falls between two pixels still takes one.
    const right = Math.max(left + 1, Math.round(x + halfX) - leftPx)
    const bottom = Math.max(top + 1, Math.round(y + halfY) - topPx)
    const from = Math.max(0, left)
    const to = Math.min(width, right)
    const edge = hasSeam ? (colours.edge[slot] ?? 0) : body
    const last = Math.min(height, bottom)
    for (let row = Math.max(0, top); row < last; row += 1) {
      const start = row * width
      if (to > from) pixels.fill(row === bottom - 1 ? edge : body, start + from, start + to)
      if (right > from && right <= width) pixels[start + right - 1] = edge
    }
  })
}

/** A colour as one opaque little-endian RGBA pixel. */
function pixelOf(hex: string): number {
  const value = Number.parseInt(hex.slice(1), 16)
  const [red, green, blue] = [value >> 16, (value >> 8) & 255, value & 255]
  return ((255 << 24) | (blue << 16) | (green << 8) | red) >>> 0
}
