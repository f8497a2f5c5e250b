import type { BoxMm } from './bead-grid.ts'
import type { Brush } from './bead-look.ts'
import { TILE_PX, type Tile } from './tile.ts'
import type { View } from './view.ts'

/** The tiles of one scale, pixels a mm, by their key. */
export type TileLayer = Readonly<{ scale: number; tiles: Map<string, Tile> }>

/** A layer without tiles. */
export const noLayer = (): TileLayer => ({ scale: 0, tiles: new Map() })

/** The key of a tile by its place. */
export const keyOf = (column: number, row: number) => `${column},${row}`

/** Calls back with each tile of a scale that lies in a box. */
export function forEachTile(
  box: BoxMm,
  scale: number,
  visit: (column: number, row: number) => void,
): void {
  if (scale <= 0) return
  const side = TILE_PX / scale
  for (let row = Math.floor(box.top / side); row * side < box.bottom; row += 1) {
    for (let column = Math.floor(box.left / side); column * side < box.right; column += 1) {
      visit(column, row)
    }
  }
}

/** Stamps the tiles of a box on a canvas, stretched where their scale is not the view's. */
export function stampTiles(
  brush: Brush,
  { scale, tiles }: TileLayer,
  view: View,
  box: BoxMm,
): void {
  const side = (TILE_PX * view.scale) / scale
  // Neighbours meet on a whole pixel: a shared fraction of one would let the ground through as a line.
  const edge = (tile: number, mm: number) => Math.round(tile * side) - Math.round(mm * view.scale)
  forEachTile(box, scale, (column, row) => {
    const tile = tiles.get(keyOf(column, row))
    if (tile === undefined) return
    const [x, y] = [edge(column, view.xMm), edge(row, view.yMm)]
    const [right, bottom] = [edge(column + 1, view.xMm), edge(row + 1, view.yMm)]
    brush.drawImage(tile.image, x, y, right - x, bottom - y)
  })
}
