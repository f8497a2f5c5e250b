import { type BoxMm, buildGrid } from './bead-grid.ts'
import type { Brush } from './bead-look.ts'
import { type BeadScene, beadReach } from './bead-scene.ts'
import { changedBeads } from './changed-beads.ts'
import { farColours } from './paint-far.ts'
import { blankTile, paintTile, TILE_PX, type Tile, type Work } from './tile.ts'
import type { SizePx, View } from './view.ts'

/** Beads are never rastered smaller than this; farther away the tiles are shown shrunk and smooth. */
const LEAST_BEAD_PX = 1.5
const MOST_TILES = 96
/** More changed beads at once than this and everything is painted anew. */
const MOST_PATCHES = 400

type Layer = Readonly<{ scale: number; tiles: Map<string, Tile> }>

const noLayer = (): Layer => ({ scale: 0, tiles: new Map() })

/** While `isMoving` the tiles at hand are stretched; else new ones are painted until `untilMs` on the clock `nowMs`. */
type DrawHow = Readonly<{ isMoving: boolean; untilMs: number; nowMs: () => number }>

/** The painted work in tiles: panning stamps them, an edit paints only what changed. */
export class TileStore {
  #work: Work | undefined
  #layer: Layer = noLayer()
  /** Tiles of the scale before, shown while sharp ones are still being painted. */
  #under: Layer = noLayer()
  #turn = 0

  /** Takes a scene, or a changed one; works out by itself what has to be painted again. */
  setScene(scene: BeadScene): void {
    const before = this.#work
    const isSamePlaces = before?.scene.xMm === scene.xMm && before.scene.yMm === scene.yMm
    const isSameLook = before?.scene.palette === scene.palette
    this.#work = {
      scene,
      grid: before !== undefined && isSamePlaces ? before.grid : buildGrid(scene),
      colours: before !== undefined && isSameLook ? before.colours : farColours(scene.palette),
    }
    if (before === undefined || !isSamePlaces || !isSameLook) this.#drop()
    else if (before.scene.slotOf !== scene.slotOf) this.#patch(before.scene, scene)
  }

  /** The grid of the scene, for those who look beads up by place. */
  get work(): Work | undefined {
    return this.#work
  }

  /** Draws the view; true when all that is seen is sharp. */
  draw(brush: Brush, canvas: SizePx, view: View, how: DrawHow): boolean {
    if (this.#work === undefined) return true
    this.#turn += 1
    const { beadWidthMm, beadHeightMm } = this.#work.scene
    const wanted = Math.max(view.scale, LEAST_BEAD_PX / Math.min(beadWidthMm, beadHeightMm))
    if (wanted !== this.#layer.scale && (!how.isMoving || this.#layer.scale === 0)) {
      this.#under = this.#layer
      this.#layer = { scale: wanted, tiles: new Map() }
    }
    const seen = seenBox(view, canvas, this.#work.scene)
    const isWhole = this.#paintMissing(this.#work, seen, how)
    brush.imageSmoothingEnabled = true
    brush.imageSmoothingQuality = how.isMoving ? 'low' : 'high'
    if (!isWhole) stamp(brush, this.#under, view, seen)
    stamp(brush, this.#layer, view, seen)
    this.#forget()
    const isSharp = isWhole && wanted === this.#layer.scale
    if (isSharp) this.#under = noLayer()
    return isSharp
  }

  #drop(): void {
    this.#layer = noLayer()
    this.#under = noLayer()
  }

  #patch(before: BeadScene, after: BeadScene): void {
    const changed = changedBeads(before.slotOf, after.slotOf, MOST_PATCHES)
    if (changed === undefined) {
      this.#drop()
      return
    }
    this.#under = noLayer()
    const { scale, tiles } = this.#layer
    const reach = beadReach(after)
    // Room for the shadow and for rounding to whole pixels.
    const room = { x: reach.xMm * 1.3 + 2 / scale, y: reach.yMm * 1.3 + 2 / scale }
    for (const bead of changed) {
      const [x, y] = [after.xMm[bead] ?? 0, after.yMm[bead] ?? 0]
      const box = { left: x - room.x, top: y - room.y, right: x + room.x, bottom: y + room.y }
      forEachTile(box, scale, (column, row) => {
        const tile = tiles.get(keyOf(column, row))
        if (tile !== undefined && tile.stale !== 'all') tile.stale = [...tile.stale, box]
      })
    }
  }

  #paintMissing(work: Work, seen: BoxMm, how: DrawHow): boolean {
    const { scale, tiles } = this.#layer
    let isWhole = true
    let painted = 0
    forEachTile(seen, scale, (column, row) => {
      const key = keyOf(column, row)
      const tile = tiles.get(key) ?? blankTile(column, row, scale)
      tile.usedAt = this.#turn
      if (tile.stale.length === 0) return
      // At least one a frame, or nothing would ever come.
      if (painted > 0 && how.nowMs() > how.untilMs) {
        isWhole = false
        return
      }
      paintTile(tile, work)
      painted += 1
      tiles.set(key, tile)
    })
    return isWhole
  }

  #forget(): void {
    const { tiles } = this.#layer
    if (tiles.size <= MOST_TILES) return
    const oldest = [...tiles].sort(([, a], [, b]) => a.usedAt - b.usedAt)
    for (const [key] of oldest.slice(0, tiles.size - MOST_TILES)) tiles.delete(key)
  }
}

function stamp(brush: Brush, { scale, tiles }: Layer, view: View, seen: BoxMm): void {
  const stretch = view.scale / scale
  const side = TILE_PX * stretch
  forEachTile(seen, scale, (column, row) => {
    const tile = tiles.get(keyOf(column, row))
    if (tile === undefined) return
    const x = column * side - view.xMm * view.scale
    const y = row * side - view.yMm * view.scale
    if (stretch === 1) brush.drawImage(tile.image, Math.round(x), Math.round(y))
    // A hair wider than exact, so that no seam shows between stretched tiles.
    else brush.drawImage(tile.image, x, y, side + 0.5, side + 0.5)
  })
}

/** What is seen of the work, with room for shadows and bridges at its edges. */
function seenBox(view: View, canvas: SizePx, scene: BeadScene): BoxMm {
  const spare = Math.max(scene.beadWidthMm, scene.beadHeightMm)
  return {
    left: Math.max(view.xMm, -spare),
    top: Math.max(view.yMm, -spare),
    right: Math.min(view.xMm + canvas.width / view.scale, scene.widthMm + spare),
    bottom: Math.min(view.yMm + canvas.height / view.scale, scene.heightMm + spare),
  }
}

const keyOf = (column: number, row: number) => `${column},${row}`

function forEachTile(
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
