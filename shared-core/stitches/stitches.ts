import type { Chart, StitchKind } from '../chart/chart.ts'
import { brick } from './brick/brick.ts'
import { peyote } from './peyote/peyote.ts'
import type { Stitch } from './stitch.ts'

/** Every stitch by its kind. A new stitch is a folder of its own and one line here. */
const stitches: Readonly<Partial<Record<StitchKind, Stitch>>> = { brick, peyote }

/** The stitch a chart is worked in. */
export function stitchOf(chart: Chart): Stitch {
  const stitch = stitches[chart.stitch]
  if (stitch === undefined) throw new Error(`Broken assumption: no stitch ${chart.stitch}`)
  return stitch
}
