import type { BeadGrid } from './bead-grid.ts'
import type { Brush } from './bead-look.ts'
import type { BeadScene } from './bead-scene.ts'
import type { Region } from './paint-region.ts'

/** Natural thread, seen the same by day and by lamplight. */
const THREAD = 'rgb(222 217 202)'
const THREAD_EDGE = 'rgb(124 119 104)'
/** Thickness on the picture, mm: a braid of middle size. */
const THREAD_MM = 0.16
/** How far a bridge stands out from the bead's end, mm. */
const BRIDGE_MM = 0.22

/** Paints what shows of the thread: bridges at the outer edges, and the warps of a loom. */
export function paintThreads(brush: Brush, scene: BeadScene, grid: BeadGrid, region: Region): void {
  const path = new Path2D()
  if (scene.lines !== undefined) addLines(path, scene.lines, region)
  if (scene.nextOf !== undefined) addBridges(path, scene, scene.nextOf, grid, region)
  brush.lineCap = 'round'
  brush.lineJoin = 'round'
  brush.strokeStyle = THREAD_EDGE
  brush.lineWidth = (THREAD_MM + 0.04) * region.scale
  brush.stroke(path)
  brush.strokeStyle = THREAD
  brush.lineWidth = THREAD_MM * region.scale
  brush.stroke(path)
}

function addBridges(
  path: Path2D,
  scene: BeadScene,
  nextOf: Int32Array,
  grid: BeadGrid,
  region: Region,
): void {
  const { box, scale, leftPx, topPx } = region
  const isUpright = scene.axis === 'vertical'
  const half = (isUpright ? scene.beadHeightMm : scene.beadWidthMm) / 2
  const px = (mm: number) => mm * scale - leftPx
  const py = (mm: number) => mm * scale - topPx
  // Wider than the region by a bead, because a bridge belongs to its first bead.
  const reach = 2 * Math.max(scene.beadWidthMm, scene.beadHeightMm)
  const wide = {
    left: box.left - reach,
    top: box.top - reach,
    right: box.right + reach,
    bottom: box.bottom + reach,
  }
  grid.forEachIn(wide, (bead) => {
    const next = nextOf[bead] ?? -1
    if (next < 0 || isEmpty(scene, bead) || isEmpty(scene, next)) return
    const [ax, ay] = [scene.xMm[bead] ?? 0, scene.yMm[bead] ?? 0]
    const [bx, by] = [scene.xMm[next] ?? 0, scene.yMm[next] ?? 0]
    for (const side of [-1, 1]) {
      const out = side * (half + BRIDGE_MM)
      const end = side * (half - 0.05)
      if (isUpright) {
        path.moveTo(px(ax), py(ay + end))
        path.bezierCurveTo(px(ax), py(ay + out), px(bx), py(by + out), px(bx), py(by + end))
      } else {
        path.moveTo(px(ax + end), py(ay))
        path.bezierCurveTo(px(ax + out), py(ay), px(bx + out), py(by), px(bx + end), py(by))
      }
    }
  })
}

/** Whether a place has no bead: its slot is not in the palette. */
function isEmpty({ palette, slotOf }: BeadScene, bead: number): boolean {
  return palette[slotOf[bead] ?? 0] === undefined
}

function addLines(path: Path2D, lines: Float32Array, { scale, leftPx, topPx }: Region): void {
  for (let i = 0; i < lines.length; i += 4) {
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = lines.subarray(i, i + 4)
    path.moveTo(x1 * scale - leftPx, y1 * scale - topPx)
    path.lineTo(x2 * scale - leftPx, y2 * scale - topPx)
  }
}
