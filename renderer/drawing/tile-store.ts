import { type BoxMm, buildGrid } from './bead-grid.ts'
import type { Brush } from './bead-look.ts'
import { type BeadScene, beadReach } from './bead-scene.ts'
import { changedBeads } from './changed-beads.ts'
import { farColours } from './paint-far.ts'
import { forEachTile, keyOf, noLayer, stampTiles, type TileLayer } from './stamp-tiles.ts'
import { blankTile, paintTile, staleBox, TILE_PX, type Work } from './tile.ts'
import type { SizePx, View } from './view.ts'

/** Beads are never rastered smaller than this; farther away the tiles are shown shrunk and smooth. */
const LEAST_BEAD_PX = 1.5
const MOST_TILES = 96
/** Tiles that a work seen whole may take: room is left for those of the scale before. */
const WHOLE_TILES = 64
/** More changed beads at once than this and everything is painted anew. */
const MOST_PATCHES = 400
/** Pixels round a mended part that smoothing reaches into. */
const SMOOTHED_PX = 3

/** While `isMoving` the tiles at hand are stretched; else new ones are painted until `untilMs` on the clock `nowMs`. */
type DrawHow = Readonly<{ isMoving: boolean; untilMs: number; nowMs: () => number }>

/** What lies on the canvas, all of it sharp. */
type Shown = Readonly<{ layer: TileLayer; view: View; width: number; height: number }>

/** The painted work in tiles: panning stamps them, an edit paints and shows only what changed. */
export class TileStore {
  #work: Work | undefined
  /** Slots as they are painted. */
  #slots = new Uint16Array()
  #layer: TileLayer = noLayer()
  /** Tiles of the scale before, shown while sharp ones are still being painted. */
  #under: TileLayer = noLayer()
  #shown: Shown | undefined
  #placeInk = ''
  /** Whether nothing of these places was ever shown: then all of it is painted at once, so that nothing flickers. */
  #isNew = true
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
      placeInk: this.#placeInk,
    }
    if (before === undefined || !isSamePlaces) this.#begin(scene)
    else if (!isSameLook) this.repaint()
    else this.#patch(scene)
  }

  /** The grid of the scene, for those who look beads up by place. */
  get work(): Work | undefined {
    return this.#work
  }

  /** The colour that empty places are outlined with. */
  setPlaceInk(ink: string): void {
    if (ink === this.#placeInk) return
    this.#placeInk = ink
    if (this.#work === undefined) return
    this.#work = { ...this.#work, placeInk: ink }
    if (this.#work.scene.showsPlaces === true) this.repaint()
  }

  /** Paints everything anew; what was painted is shown until then. */
  repaint(): void {
    for (const tile of this.#layer.tiles.values()) tile.stale = 'all'
    this.#under = noLayer()
    this.#slots = this.#work?.scene.slotOf.slice() ?? new Uint16Array()
  }

  /** To be called when the canvas was cleared by someone else. */
  forgetShown(): void {
    this.#shown = undefined
  }

  /** Draws the view, or what has changed since it was drawn; true when all that is seen is sharp. */
  draw(brush: Brush, canvas: SizePx, view: View, how: DrawHow): boolean {
    if (this.#work === undefined) return true
    this.#turn += 1
    const wanted = rasterScale(view.scale, this.#work.scene)
    if (wanted !== this.#layer.scale && (!how.isMoving || this.#layer.scale === 0)) {
      this.#under = this.#layer
      this.#layer = { scale: wanted, tiles: new Map() }
    }
    const seen = seenBox(view, canvas, this.#work.scene)
    const { isWhole, mended } = this.#paintMissing(this.#work, seen, how)
    brush.imageSmoothingEnabled = true
    brush.imageSmoothingQuality = how.isMoving ? 'low' : 'high'
    if (isWhole && isStill(this.#shown, this.#layer, { view, ...canvas })) {
      for (const box of mended) this.#show(brush, view, inside(box, seen))
    } else {
      brush.clearRect(0, 0, canvas.width, canvas.height)
      if (!isWhole) stampTiles(brush, this.#under, view, seen)
      stampTiles(brush, this.#layer, view, seen)
    }
    this.#forget()
    const isSharp = isWhole && wanted === this.#layer.scale
    if (isSharp) this.#under = noLayer()
    this.#isNew = false
    const { width, height } = canvas
    this.#shown = isSharp && !how.isMoving ? { layer: this.#layer, view, width, height } : undefined
    return isSharp
  }

  #begin({ slotOf }: BeadScene): void {
    this.#layer = noLayer()
    this.#under = noLayer()
    this.#slots = slotOf.slice()
    this.#isNew = true
  }

  /** Shows a part of the tiles anew. */
  #show(brush: Brush, view: View, box: BoxMm): void {
    const px = (mm: number, from: number) => (mm - from) * view.scale
    const left = Math.floor(px(box.left, view.xMm)) - SMOOTHED_PX
    const top = Math.floor(px(box.top, view.yMm)) - SMOOTHED_PX
    const width = Math.ceil(px(box.right, view.xMm)) + SMOOTHED_PX - left
    const height = Math.ceil(px(box.bottom, view.yMm)) + SMOOTHED_PX - top
    brush.save()
    brush.beginPath()
    brush.rect(left, top, width, height)
    brush.clip()
    brush.clearRect(left, top, width, height)
    stampTiles(brush, this.#layer, view, {
      left: view.xMm + left / view.scale,
      top: view.yMm + top / view.scale,
      right: view.xMm + (left + width) / view.scale,
      bottom: view.yMm + (top + height) / view.scale,
    })
    brush.restore()
  }

  #patch(after: BeadScene): void {
    const changed = changedBeads(this.#slots, after.slotOf, MOST_PATCHES)
    if (changed === undefined) {
      this.repaint()
      return
    }
    if (changed.length > 0) this.#under = noLayer()
    const { scale, tiles } = this.#layer
    const reach = beadReach(after)
    // Room for the shadow and for rounding to whole pixels.
    const room = { x: reach.xMm * 1.3 + 2 / scale, y: reach.yMm * 1.3 + 2 / scale }
    for (const bead of changed) {
      this.#slots[bead] = after.slotOf[bead] ?? 0
      const [x, y] = [after.xMm[bead] ?? 0, after.yMm[bead] ?? 0]
      const box = { left: x - room.x, top: y - room.y, right: x + room.x, bottom: y + room.y }
      forEachTile(box, scale, (column, row) => {
        const tile = tiles.get(keyOf(column, row))
        if (tile !== undefined && tile.stale !== 'all') tile.stale.push(box)
      })
    }
  }

  #paintMissing(work: Work, seen: BoxMm, how: DrawHow) {
    const { scale, tiles } = this.#layer
    const mended: BoxMm[] = []
    let isWhole = true
    let painted = 0
    forEachTile(seen, scale, (column, row) => {
      const key = keyOf(column, row)
      const tile = tiles.get(key) ?? blankTile(column, row, scale)
      tile.usedAt = this.#turn
      if (tile.stale.length === 0) return
      // At least one a frame, or nothing would ever come.
      if (painted > 0 && !this.#isNew && how.nowMs() > how.untilMs) {
        isWhole = false
        return
      }
      mended.push(staleBox(tile))
      paintTile(tile, work)
      painted += 1
      tiles.set(key, tile)
    })
    return { isWhole, mended }
  }

  #forget(): void {
    const { tiles } = this.#layer
    if (tiles.size <= MOST_TILES) return
    const oldest = [...tiles].sort(([, a], [, b]) => a.usedAt - b.usedAt)
    for (const [key] of oldest.slice(0, tiles.size - MOST_TILES)) tiles.delete(key)
  }
}

/** Whether the canvas shows this view of these tiles already. */
function isStill(
  shown: Shown | undefined,
  layer: TileLayer,
  { view, width, height }: Omit<Shown, 'layer'>,
): boolean {
  return (
    shown?.layer === layer &&
    shown.width === width &&
    shown.height === height &&
    shown.view.scale === view.scale &&
    shown.view.xMm === view.xMm &&
    shown.view.yMm === view.yMm
  )
}

function inside(box: BoxMm, seen: BoxMm): BoxMm {
  return {
    left: Math.max(box.left, seen.left),
    top: Math.max(box.top, seen.top),
    right: Math.min(box.right, seen.right),
    bottom: Math.min(box.bottom, seen.bottom),
  }
}

/**
 * The scale to raster at, pixels a mm: that of the view, or larger so that no bead is lost, but never so
 * large that the tiles of a work seen whole would push each other out.
 */
export function rasterScale(
  scale: number,
  { beadWidthMm, beadHeightMm, widthMm, heightMm }: BeadScene,
): number {
  const clear = LEAST_BEAD_PX / Math.min(beadWidthMm, beadHeightMm)
  // Tiles across times tiles down, each with one begun: (w s + 1)(h s + 1) = most, solved for s.
  const [w, h] = [widthMm / TILE_PX, heightMm / TILE_PX]
  const [a, b] = [w * h, w + h]
  const most = a > 0 ? (Math.sqrt(b * b + 4 * a * (WHOLE_TILES - 1)) - b) / (2 * a) : clear
  return Math.max(scale, Math.min(clear, most))
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
