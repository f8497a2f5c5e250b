import type { BeadGrid, BoxMm } from './bead-grid.ts'
import type { BeadScene } from './bead-scene.ts'
import { type FarColours, paintFar } from './paint-far.ts'
import { paintRegion, SPRITES_FROM_PX } from './paint-region.ts'

/** Side of a tile in pixels. */
export const TILE_PX = 512

/** What the painting of a tile needs to know of the work. */
export type Work = Readonly<{ scene: BeadScene; grid: BeadGrid; colours: FarColours }>

/** A square of the work, painted at one scale. */
export type Tile = {
  readonly image: OffscreenCanvas
  readonly column: number
  readonly row: number
  readonly scale: number
  /** Boxes that have changed since it was painted; all of it before the first painting. */
  stale: readonly BoxMm[] | 'all'
  usedAt: number
}

/** A tile not painted yet. */
export function blankTile(column: number, row: number, scale: number): Tile {
  const image = new OffscreenCanvas(TILE_PX, TILE_PX)
  return { image, column, row, scale, stale: 'all', usedAt: 0 }
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

function paintTileFar(brush: OffscreenCanvasRenderingContext2D, tile: Tile, work: Work): void {
  const data = new ImageData(TILE_PX, TILE_PX)
  const pixels = new Uint32Array(data.data.buffer)
  paintFar(pixels, TILE_PX, work.scene, work.grid, {
    box: tileBox(tile),
    leftPx: tile.column * TILE_PX,
    topPx: tile.row * TILE_PX,
    scale: tile.scale,
    colours: work.colours,
  })
  brush.putImageData(data, 0, 0)
}

function paintPart(
  brush: OffscreenCanvasRenderingContext2D,
  tile: Tile,
  part: BoxMm,
  { scene, grid }: Work,
): void {
  const { scale } = tile
  const [leftPx, topPx] = [tile.column * TILE_PX, tile.row * TILE_PX]
  const x = Math.floor(part.left * scale) - leftPx
  const y = Math.floor(part.top * scale) - topPx
  const width = Math.ceil(part.right * scale) - leftPx - x
  const height = Math.ceil(part.bottom * scale) - topPx - y
  brush.save()
  brush.beginPath()
  brush.rect(x, y, width, height)
  brush.clip()
  brush.clearRect(x, y, width, height)
  // Shadows of beads just outside fall into the part too.
  const reach = 0.3 * Math.max(scene.beadWidthMm, scene.beadHeightMm)
  const box = {
    left: part.left - reach,
    top: part.top - reach,
    right: part.right + reach,
    bottom: part.bottom + reach,
  }
  paintRegion(brush, scene, grid, { box, leftPx, topPx, scale })
  brush.restore()
}
