import type { BeadForm } from '../beads/bead-form.ts'

/** Beads of a slot in one copy of a part, with the form they take. */
export type SlotTotal = Readonly<{ count: number; form: BeadForm }>

/** Beads of each slot that has any, by slot index. */
export function slotTotals(
  counts: Uint32Array,
  formOf: (slot: number) => BeadForm,
): ReadonlyMap<number, SlotTotal> {
  const totals = new Map<number, SlotTotal>()
  counts.forEach((count, slot) => {
    if (count > 0) totals.set(slot, { count, form: formOf(slot) })
  })
  return totals
}
