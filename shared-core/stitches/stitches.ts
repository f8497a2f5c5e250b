import type { Chart, StitchKind } from '../chart/chart.ts'
import { brick } from './brick/brick.ts'
import { herringbone } from './herringbone/herringbone.ts'
import { ladder } from './ladder/ladder.ts'
import { loom } from './loom/loom.ts'
import { peyote } from './peyote/peyote.ts'
import { rightAngleWeave } from './right-angle-weave/right-angle-weave.ts'
import { square } from './square/square.ts'
import type { Stitch } from './stitch.ts'

/** Every stitch by its kind. A new stitch is a folder of its own and one line here. */
const stitches: Readonly<Record<StitchKind, Stitch>> = {
  brick,
  peyote,
  square,
  loom,
  ladder,
  herringbone,
  'right-angle-weave': rightAngleWeave,
}

/** The stitch a chart is worked in. */
export function stitchOf(chart: Chart): Stitch {
  return stitches[chart.stitch]
}
