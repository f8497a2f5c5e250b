import type { MaterialRow } from '../../page/open-design.ts'

/** A bead of stock whose colour is known. */
export type StockBead = MaterialRow & Readonly<{ colourHex: string }>

/** Beads of stock that a slot of a form can take and whose colour is known; only those on hand when asked. */
export function stockBeads(
  materials: readonly MaterialRow[],
  { formId, onHand }: Readonly<{ formId: string; onHand: boolean }>,
): readonly StockBead[] {
  return materials.filter(
    (one): one is StockBead =>
      one.kind === 'bead' &&
      one.colourHex !== null &&
      (one.formId === null || one.formId === formId) &&
      (!onHand || one.available > 0),
  )
}
