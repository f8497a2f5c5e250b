import type { BeadScene } from './bead-scene.ts'
import { TileStore } from './tile-store.ts'
import { fitView } from './view.ts'

/** Draws a whole scene, fitted, on a canvas of a CSS size; at once, for galleries, lists and cards. */
export function drawThumbnail(
  canvas: HTMLCanvasElement,
  scene: BeadScene,
  size: Readonly<{ width: number; height: number }>,
): void {
  const ratio = globalThis.devicePixelRatio || 1
  canvas.width = Math.round(size.width * ratio)
  canvas.height = Math.round(size.height * ratio)
  const brush = canvas.getContext('2d')
  if (brush === null) return
  const tiles = new TileStore()
  tiles.setScene(scene)
  const view = fitView(scene, canvas, 0.08)
  tiles.draw(brush, canvas, view, {
    isMoving: false,
    untilMs: Number.POSITIVE_INFINITY,
    nowMs: () => 0,
  })
}
