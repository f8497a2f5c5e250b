import type { BeadFinish } from '../../../shared-core/beads/bead-form.ts'
import type { SampleLot, SampleMaterial } from './sample-material.ts'

type BeadFigures = Readonly<{
  code: string
  name: string
  hex: string
  finish: BeadFinish
  drawer: string
  priceMinor: number
  /** The last figure is what a pack cost then. */
  lots: readonly SampleLot[]
  note?: string
}>

/** A cylinder bead 11/0, sold by 7.2 g. */
export const cylinder = (bead: BeadFigures): SampleMaterial =>
  beadOf('cylinder-11/0', 7_200, 4_000, bead)

/** A round bead 15/0, sold by 10 g. */
export const small = (bead: BeadFigures): SampleMaterial =>
  beadOf('rocaille-japanese-15/0', 10_000, 2_000, bead)

/** A round bead 8/0, sold by 25 g. */
export const large = (bead: BeadFigures): SampleMaterial =>
  beadOf('rocaille-japanese-8/0', 25_000, 10_000, bead)

function beadOf(
  formId: string,
  packMg: number,
  lowAt: number,
  { hex, priceMinor, lots, ...bead }: BeadFigures,
): SampleMaterial {
  return {
    ...bead,
    kind: 'bead',
    formId,
    colourHex: hex,
    lowAt,
    supplier: 'marlow',
    pack: [packMg, priceMinor],
    lots: lots.map(([dyeLot, quantity, daysAgo, packPriceMinor]) => [
      dyeLot,
      quantity,
      daysAgo,
      Math.round((quantity * packPriceMinor) / packMg),
    ]),
  }
}
