import { buildGrid } from './bead-grid.ts'
import type { Brush } from './bead-look.ts'
import type { BeadScene } from './bead-scene.ts'
import { farColours, paintFar } from './paint-far.ts'
import { paintRegion, SPRITES_FROM_PX } from './paint-region.ts'
import { screenRatio } from './screen-ratio.ts'
import { fitView, type SizePx, type View } from './view.ts'

/** The share of a small picture that stays free on each side. */
export const THUMBNAIL_MARGIN = 0.08
/** A bead is drawn at least this large and the picture made smaller, so that beads still read as beads. */
const BEAD_PX = 9
/** Of very many beads only the colours can be seen; these blend when the picture is made smaller. */
const [MANY, MANY_BEAD_PX] = [12_000, 3]
const MOST_TIMES = 4

/** Draws a whole scene, fitted, on a canvas of a CSS size; at once, for galleries, lists and cards. */
export function drawThumbnail(
  canvas: HTMLCanvasElement,
  scene: BeadScene,
  size: Readonly<{ width: number; height: number }>,
): void {
  const ratio = screenRatio()
  canvas.width = Math.round(size.width * ratio)
  canvas.height = Math.round(size.height * ratio)
  const brush = canvas.getContext('2d')
  if (brush === null) return
  const view = fitView(scene, canvas, THUMBNAIL_MARGIN)
  const times = timesLarger(scene, view)
  if (times === 1) {
    paintWhole(brush, scene, canvas, view)
    return
  }
  const large = { width: canvas.width * times, height: canvas.height * times }
  const sheet = scratch(large)
  const onSheet = sheet.getContext('2d')
  if (onSheet === null) return
  onSheet.clearRect(0, 0, large.width, large.height)
  paintWhole(onSheet, scene, large, { ...view, scale: view.scale * times })
  brush.imageSmoothingQuality = 'high'
  const { width, height } = canvas
  brush.drawImage(sheet, 0, 0, large.width, large.height, 0, 0, width, height)
}

/** How many times larger than shown a scene is drawn. */
export function timesLarger(scene: BeadScene, { scale }: View): number {
  const wantedPx = scene.xMm.length > MANY ? MANY_BEAD_PX : BEAD_PX
  const beadPx = Math.min(scene.beadWidthMm, scene.beadHeightMm) * scale
  return Math.min(MOST_TIMES, Math.max(1, Math.ceil(wantedPx / beadPx)))
}

function paintWhole(brush: Brush, scene: BeadScene, size: SizePx, view: View): void {
  const { scale } = view
  const grid = buildGrid(scene)
  const [leftPx, topPx] = [Math.round(view.xMm * scale), Math.round(view.yMm * scale)]
  const region = { box: EVERYWHERE, leftPx, topPx, scale }
  if (Math.min(scene.beadWidthMm, scene.beadHeightMm) * scale >= SPRITES_FROM_PX) {
    paintRegion(brush, scene, grid, region)
    return
  }
  const data = brush.createImageData(size.width, size.height)
  const colours = farColours(scene.palette)
  const pixels = new Uint32Array(data.data.buffer)
  paintFar(pixels, size.width, scene, grid, { ...region, colours })
  brush.putImageData(data, 0, 0)
}

const EVERYWHERE = { left: -Infinity, top: -Infinity, right: Infinity, bottom: Infinity }

let kept: OffscreenCanvas | undefined

/** One sheet for all small pictures, at least of a size: a sheet for each would be cleared away at once. */
function scratch({ width, height }: SizePx): OffscreenCanvas {
  const isLargeEnough = kept !== undefined && kept.width >= width && kept.height >= height
  if (kept === undefined || !isLargeEnough) {
    kept = new OffscreenCanvas(
      Math.max(width, kept?.width ?? 0),
      Math.max(height, kept?.height ?? 0),
    )
  }
  return kept
}
