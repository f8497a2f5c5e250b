import type { Spread } from '../units/spread.ts'

/** How a bead is shaped; decides how it is drawn and which stitches it suits. */
export type BeadFamily =
  | 'cylinder'
  | 'rocaille'
  | 'bugle'
  | 'drop'
  | 'two-hole'
  | 'cube'
  | 'faceted'

/** How a bead's surface and body take the light; decides how it is drawn, and a little what it weighs. */
export type BeadFinish =
  | 'opaque'
  | 'matte'
  | 'gloss'
  | 'transparent'
  | 'lined'
  | 'metallic'
  | 'iridescent'

/**
 * A bead form: everything that does not depend on colour.
 *
 * `diameterMm` is across the hole, `lengthMm` along it, `holeMm` the hole's diameter; all in mm.
 * `cullRate` is the share (0 to 1) of beads put aside as misshapen.
 */
export type BeadForm = Readonly<{
  id: string
  name: string
  family: BeadFamily
  sizeLabel: string
  diameterMm: Spread
  lengthMm: Spread
  holeMm: Spread
  beadsPerGram: Spread
  cullRate: Spread
}>
