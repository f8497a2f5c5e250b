import type { BeadScene } from './bead-scene.ts'
import { type OverlayColours, type OverlayLayer, readOverlayColours } from './overlay.ts'
import { pictureBrush } from './picture-brush.ts'
import { screenRatio } from './screen-ratio.ts'
import { TileStore } from './tile-store.ts'
import type { View } from './view.ts'

/** A frame may take this long painting tiles; the rest comes in the next. */
const PAINT_MS = 8
/** After the last zoom step the picture is painted sharp. */
const SETTLES_MS = 90

/** Keeps two canvases painted: beads, and layers over them. Paints once a frame at most, and only what has changed. */
export class PicturePainter {
  readonly #beads: HTMLCanvasElement
  readonly #over: HTMLCanvasElement
  readonly #tiles = new TileStore()
  #layers: readonly OverlayLayer[] = []
  #view: View | undefined
  #colours: OverlayColours | undefined
  #frame = 0
  #zoomedAt = Number.NEGATIVE_INFINITY
  /** Whether the layers show what they did when they were last painted. */
  #areLayersKept = false

  constructor(beads: HTMLCanvasElement, over: HTMLCanvasElement) {
    this.#beads = beads
    this.#over = over
  }

  setScene(scene: BeadScene): void {
    const before = this.#tiles.work?.scene
    this.#areLayersKept &&=
      before?.xMm === scene.xMm && before.yMm === scene.yMm && before.palette === scene.palette
    this.#tiles.setScene(scene)
    this.#ask()
  }

  setLayers(layers: readonly OverlayLayer[]): void {
    this.#layers = layers
    this.#askAll()
  }

  setView(view: View): void {
    if (this.#view !== undefined && this.#view.scale !== view.scale) {
      this.#zoomedAt = performance.now()
    }
    this.#view = view
    this.#askAll()
  }

  /** Makes the canvases as large as the place they stand in, in pixels of the screen. */
  resize(width: number, height: number): void {
    for (const canvas of [this.#beads, this.#over]) {
      if (canvas.width === width && canvas.height === height) continue
      canvas.width = width
      canvas.height = height
      this.#tiles.forgetShown()
    }
    this.#askAll()
  }

  /** To be called when the page's colours have changed. */
  changeTheme(): void {
    this.#colours = undefined
    this.#askAll()
  }

  close(): void {
    cancelAnimationFrame(this.#frame)
  }

  #askAll(): void {
    this.#areLayersKept = false
    this.#ask()
  }

  #ask(): void {
    if (this.#frame !== 0) return
    this.#frame = requestAnimationFrame(() => {
      this.#frame = 0
      this.#paint()
    })
  }

  #paint(): void {
    const view = this.#view
    const brush = pictureBrush(this.#beads)
    if (view === undefined || brush === null) return
    const now = performance.now()
    const isMoving = now - this.#zoomedAt < SETTLES_MS
    this.#colours ??= readOverlayColours(this.#over.parentElement ?? document.body)
    this.#tiles.setPlaceInk(this.#colours.ink)
    const isSharp = this.#tiles.draw(brush, this.#beads, view, {
      isMoving,
      untilMs: now + PAINT_MS,
      nowMs: () => performance.now(),
    })
    if (!this.#areLayersKept) this.#paintLayers(view, this.#colours)
    this.#areLayersKept = true
    if (!isSharp || isMoving) this.#ask()
  }

  #paintLayers(view: View, colours: OverlayColours): void {
    const brush = pictureBrush(this.#over)
    const work = this.#tiles.work
    if (brush === null || work === undefined) return
    const { width, height } = this.#over
    // Out of the way while empty: a second canvas costs as much to show as the first.
    this.#over.hidden = this.#layers.length === 0
    if (this.#over.hidden) return
    brush.clearRect(0, 0, width, height)
    const seen = {
      left: view.xMm,
      top: view.yMm,
      right: view.xMm + width / view.scale,
      bottom: view.yMm + height / view.scale,
    }
    const x = (mm: number) => (mm - view.xMm) * view.scale
    const y = (mm: number) => (mm - view.yMm) * view.scale
    const ratio = screenRatio()
    for (const layer of this.#layers) {
      layer({ brush, ...work, view, seen, x, y, ratio, colours })
    }
  }
}
