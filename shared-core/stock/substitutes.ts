import { unitsFrom } from './units-from.ts'

/** A bead that may stand in for another: its form, how it looks, and what is available of it in mg, by lot. */
export type BeadOnHand<Colour> = Readonly<{
  materialId: string
  formId: string
  finish: string
  colour: Colour
  lotsMatter: boolean
  lots: readonly number[]
}>

/** A bead that could stand in: how far its colour is, and the units its stock allows. */
export type Substitute = Readonly<{
  materialId: string
  colourDifference: number
  sameFinish: boolean
  units: number
}>

/** What is looked for: a stand-in for `bead` that covers `units` of `perUnit` mg each. */
export type SubstituteRequest<Colour> = Readonly<{
  bead: Pick<BeadOnHand<Colour>, 'materialId' | 'formId' | 'finish' | 'colour'>
  perUnit: number
  units: number
  candidates: readonly BeadOnHand<Colour>[]
}>

/**
 * Beads that could stand in for one that is short: same form and size, enough stock, nearest colour first.
 *
 * Same form means the same size, so the chart, its thread and its finished size stand. Enough means
 * all units, each from one lot where lots matter. Beads of a like finish come before others at the
 * same colour difference; ties then keep the order given.
 *
 * @param difference of two colours, 0 for equal; CIEDE2000 in the product
 */
export function substitutes<Colour>(
  { bead, perUnit, units, candidates }: SubstituteRequest<Colour>,
  difference: (a: Colour, b: Colour) => number,
): readonly Substitute[] {
  return candidates
    .filter((c) => c.formId === bead.formId && c.materialId !== bead.materialId)
    .map((c) => ({
      materialId: c.materialId,
      colourDifference: difference(bead.colour, c.colour),
      sameFinish: c.finish === bead.finish,
      units: unitsFrom(c.lots, perUnit, c.lotsMatter),
    }))
    .filter((substitute) => substitute.units >= units)
    .sort(
      (a, b) =>
        a.colourDifference - b.colourDifference || Number(b.sameFinish) - Number(a.sameFinish),
    )
}
