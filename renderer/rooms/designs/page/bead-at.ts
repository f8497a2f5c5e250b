import type { BeadGrid } from '../../../drawing/bead-grid.ts'
import { type BeadScene, beadReach } from '../../../drawing/bead-scene.ts'
import type { PointMm } from '../../../drawing/use-picture-input.ts'

/** The bead under a point of the picture, the nearest by its middle; -1 where there is none. */
export function beadAt(scene: BeadScene, grid: BeadGrid, { xMm, yMm }: PointMm): number {
  const reach = beadReach(scene)
  let best = -1
  let least = Number.POSITIVE_INFINITY
  grid.forEachIn({ left: xMm, top: yMm, right: xMm, bottom: yMm }, (bead) => {
    const dx = ((scene.xMm[bead] ?? 0) - xMm) / reach.xMm
    const dy = ((scene.yMm[bead] ?? 0) - yMm) / reach.yMm
    const away = Math.max(Math.abs(dx), Math.abs(dy))
    if (away > 1 || away >= least) return
    least = away
    best = bead
  })
  return best
}
