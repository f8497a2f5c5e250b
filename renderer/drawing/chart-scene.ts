import type { BeadForm } from '../../shared-core/beads/bead-form.ts'
import { type BeadIndex, findBead, indexBeads } from '../../shared-core/chart/bead-index.ts'
import type { Chart } from '../../shared-core/chart/chart.ts'
import { layoutChart } from '../../shared-core/chart/layout.ts'
import {
  beadBox,
  beadTilt,
  holeAxis,
  type StitchPitch,
} from '../../shared-core/chart/stitch-pitch.ts'
import type { BeadLook } from './bead-look.ts'
import type { BeadScene } from './bead-scene.ts'

type ChartSceneInput = Readonly<{
  chart: Chart
  form: BeadForm
  /** Colour and finish of each slot, by its index; the family is the form's. */
  palette: readonly Omit<BeadLook, 'family'>[]
  /** What a thread takes up between rows, mm. */
  threadMm?: number
}>

/** The beads of a chart as they lie, at the form's nominal size. One pass over the cells. */
export function chartScene({ chart, form, palette, threadMm = 0 }: ChartSceneInput): BeadScene {
  const layout = layoutChart(chart, form, { threadMm })
  const index = indexBeads(chart)
  const box = beadBox(layout.pitch, 1)
  const axis = holeAxis(chart.stitch, 1)
  return {
    xMm: layout.xMm,
    yMm: layout.yMm,
    slotOf: index.slotOf,
    palette: palette.map((look) => ({ ...look, family: form.family })),
    widthMm: layout.widthMm,
    heightMm: layout.heightMm,
    beadWidthMm: box.widthMm,
    beadHeightMm: box.heightMm,
    axis,
    gapMm: threadMm,
    turnedOf: chart.stitch === 'right-angle-weave' ? turned(index) : undefined,
    leanOf: chart.stitch === 'herringbone' ? lean(index, layout.pitch) : undefined,
    nextOf: chart.stitch === 'right-angle-weave' ? undefined : neighbours(index, axis),
    lines: chart.stitch === 'loom' ? warps(layout.pitch, index, layout.heightMm) : undefined,
  }
}

function turned({ rowOf, count }: BeadIndex): Uint8Array {
  const turnedOf = new Uint8Array(count)
  for (let bead = 0; bead < count; bead += 1) turnedOf[bead] = (rowOf[bead] ?? 0) % 2 === 0 ? 1 : 0
  return turnedOf
}

function lean({ atOf, count }: BeadIndex, pitch: StitchPitch): Float32Array {
  const leanOf = new Float32Array(count)
  for (let bead = 0; bead < count; bead += 1) leanOf[bead] = beadTilt(pitch, atOf[bead] ?? 0)
  return leanOf
}

function neighbours(index: BeadIndex, axis: 'vertical' | 'horizontal'): Int32Array {
  const { rowOf, atOf, count } = index
  const nextOf = new Int32Array(count)
  for (let bead = 0; bead < count; bead += 1) {
    const row = rowOf[bead] ?? 0
    const at = atOf[bead] ?? 0
    if (axis === 'horizontal') nextOf[bead] = findBead(index, row + 1, at)
    else nextOf[bead] = rowOf[bead + 1] === row && atOf[bead + 1] === at + 2 ? bead + 1 : -1
  }
  return nextOf
}

/** A warp before each column and one after the last. */
function warps(pitch: StitchPitch, { atOf }: BeadIndex, heightMm: number): Float32Array {
  let last = 0
  for (const at of atOf) last = Math.max(last, at)
  const columns = Math.floor(last / 2) + 1
  const lines = new Float32Array((columns + 1) * 4)
  for (let warp = 0; warp <= columns; warp += 1) {
    const xMm = pitch.leftMm + (2 * warp - 1) * pitch.halfMm
    lines.set([xMm, -pitch.downMm, xMm, heightMm + pitch.downMm], warp * 4)
  }
  return lines
}
