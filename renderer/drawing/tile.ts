import type { BeadGrid, BoxMm } from './bead-grid.ts'
import type { BeadScene } from './bead-scene.ts'
import { type FarColours, paintFar } from './paint-far.ts'
import { paintRegion, SPRITES_FROM_PX } from './paint-region.ts'

/** Side of a tile in pixels. */
export const TILE_PX = 512

/** What the painting of a tile needs to know of the work. */
export type Work = Readonly<{
  scene: BeadScene
  grid: BeadGrid
  colours: FarColours
  placeInk: string
}>

/** A square of the work, painted at one scale. */
export type Tile = {
  readonly image: OffscreenCanvas
  readonly column: number
  readonly row: number
  readonly scale: number
  /** Boxes that have changed since it was painted; all of it before the first painting. */
  stale: BoxMm[] | 'all'
  usedAt: number
}

/** A tile not painted yet. */
export function blankTile(column: number, row: number, scale: number): Tile {
  const image = new OffscreenCanvas(TILE_PX, TILE_PX)
  return { image, column, row, scale, stale: 'all', usedAt: 0 }
}

/** The part of a tile that is to be painted, mm. */
export function staleBox(tile: Tile): BoxMm {
  const whole = tileBox(tile)
  if (tile.stale === 'all') return whole
  const box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity }
  for (const { left, top, right, bottom } of tile.stale) {
    box.left = Math.min(box.left, left)
    box.top = Math.min(box.top, top)
    box.right = Math.max(box.right, right)
    box.bottom = Math.max(box.bottom, bottom)
  }
  return {
    left: Math.max(whole.left, box.left),
    top: Math.max(whole.top, box.top),
    right: Math.min(whole.right, box.right),
    bottom: Math.min(whole.bottom, box.bottom),
  }
}

/** Paints what is stale of a tile. */
export function paintTile(tile: Tile, work: Work): void {
  const brush = tile.image.getContext('2d')
  const { beadWidthMm, beadHeightMm } = work.scene
  if (brush === null) return
  if (Math.min(beadWidthMm, beadHeightMm) * tile.scale < SPRITES_FROM_PX) {
    paintTileFar(brush, tile, work)
  } else {
    const parts = tile.stale === 'all' ? [tileBox(tile)] : tile.stale
    for (const part of parts) paintPart(brush, tile, part, work)
  }
  tile.stale = []
}

function tileBox({ column, row, scale }: Tile): BoxMm {
  const side = TILE_PX / scale
  return {
    left: column * side,
    top: row * side,
    right: (column + 1) * side,
    bottom: (row + 1) * side,
  }
}

/** The whole pixels of a tile that a box touches. */
function pixelsOf({ column, row, scale }: Tile, box: BoxMm) {
  const within = (px: number) => Math.min(TILE_PX, Math.max(0, px))
  const x = within(Math.floor(box.left * scale) - column * TILE_PX)
  const y = within(Math.floor(box.top * scale) - row * TILE_PX)
  const width = within(Math.ceil(box.right * scale) - column * TILE_PX) - x
  const height = within(Math.ceil(box.bottom * scale) - row * TILE_PX) - y
  return { x, y, width, height }
}

function paintTileFar(brush: OffscreenCanvasRenderingContext2D, tile: Tile, work: Work): void {
  const box = staleBox(tile)
  const { x, y, width, height } = pixelsOf(tile, box)
  if (width <= 0 || height <= 0) return
  const data = new ImageData(width, height)
  const pixels = new Uint32Array(data.data.buffer)
  // Rounding to whole pixels and the gap of a thread reach in from beads just outside.
  const reach = 1 / tile.scale + (work.scene.gapMm ?? 0) / 2
  paintFar(pixels, width, work.scene, work.grid, {
    box: grown(box, reach),
    leftPx: tile.column * TILE_PX + x,
    topPx: tile.row * TILE_PX + y,
    scale: tile.scale,
    colours: work.colours,
  })
  brush.putImageData(data, x, y)
}

function paintPart(
  brush: OffscreenCanvasRenderingContext2D,
  tile: Tile,
  part: BoxMm,
  { scene, grid, placeInk }: Work,
): void {
  const { scale } = tile
  const { x, y, width, height } = pixelsOf(tile, part)
  if (width <= 0 || height <= 0) return
  brush.save()
  brush.beginPath()
  brush.rect(x, y, width, height)
  brush.clip()
  brush.clearRect(x, y, width, height)
  // Shadows of beads just outside fall into the part too.
  const box = grown(part, 0.3 * Math.max(scene.beadWidthMm, scene.beadHeightMm))
  const [leftPx, topPx] = [tile.column * TILE_PX, tile.row * TILE_PX]
  paintRegion(brush, scene, grid, { box, leftPx, topPx, scale, placeInk })
  brush.restore()
}

function grown({ left, top, right, bottom }: BoxMm, by: number): BoxMm {
  return { left: left - by, top: top - by, right: right + by, bottom: bottom + by }
}
