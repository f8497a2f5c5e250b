import type { StitchKind } from '../../../shared-core/chart/chart.ts'

/** Stitches worked off the loom, row upon row. */
export const offLoomStitches: readonly StitchKind[] = [
  'brick',
  'peyote',
  'square',
  'herringbone',
  'right-angle-weave',
]
