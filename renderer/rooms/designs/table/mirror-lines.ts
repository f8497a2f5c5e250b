import type { CellRef, Chart } from '../../../../shared-core/chart/chart.ts'
import { mirrorAxes } from '../../../../shared-core/chart/edits/mirror-runs.ts'
import type { Lattice } from './lattice.ts'
import type { MirrorWay } from './tools.ts'

/** Where the mirror's axes lie in the picture, mm; nothing without a mirror or without beads. */
export function mirrorLines(
  mirror: MirrorWay,
  { pitch, origin }: Lattice,
  chart: Chart,
  moved: CellRef,
): Readonly<{ xMm?: number; yMm?: number }> | undefined {
  const axes = mirror === 'none' ? undefined : mirrorAxes(chart)
  if (axes === undefined) return undefined
  const at = axes.across / 2 + origin.at - moved.at
  const rows = chart.stitch === 'peyote' ? axes.down / 4 : axes.down / 2
  const row = rows + origin.row - moved.row
  return {
    ...(mirror === 'top-bottom' ? {} : { xMm: pitch.leftMm + at * pitch.halfMm }),
    ...(mirror === 'left-right' ? {} : { yMm: pitch.topMm + row * pitch.downMm }),
  }
}
