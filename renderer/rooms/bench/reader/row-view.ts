import type { BeadScene } from '../../../drawing/bead-scene.ts'
import { screenRatio } from '../../../drawing/screen-ratio.ts'
import type { SizePx, View } from '../../../drawing/view.ts'

/** A bead is drawn no wider than this, CSS px, however short the row. */
const WIDEST_PX = 92
/** Beads seen around a row: at its ends for the arrow, above and below for its neighbours. */
const AROUND = { x: 2.4, y: 2.3 } as const

/** The view that shows some beads as large as there is room, in the middle. */
export function rowView(scene: BeadScene, beads: readonly number[]): (canvas: SizePx) => View {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity]
  for (const bead of beads) {
    const [x, y] = [scene.xMm[bead] ?? 0, scene.yMm[bead] ?? 0]
    left = Math.min(left, x)
    right = Math.max(right, x)
    top = Math.min(top, y)
    bottom = Math.max(bottom, y)
  }
  const { beadWidthMm, beadHeightMm } = scene
  const width = right - left + (1 + AROUND.x) * beadWidthMm
  const height = bottom - top + (1 + AROUND.y) * beadHeightMm
  return (canvas) => {
    const most = (WIDEST_PX * screenRatio()) / beadWidthMm
    const scale = Math.min(canvas.width / width, canvas.height / height, most)
    return {
      xMm: (left + right) / 2 - canvas.width / scale / 2,
      yMm: (top + bottom) / 2 - canvas.height / scale / 2,
      scale,
    }
  }
}
