import type { BeadForm } from '../beads/bead-form.ts'
import { slotLabel } from '../chart/chart.ts'
import type { RouteWarning } from '../route/route.ts'
import type { ReadContext } from './read-options.ts'

/** Beads a warning points at, at most. */
const MAX_NAMED = 500

/** Slots a part uses that the palette does not name, and slots whose beads are not of the panel's own form. */
export function paletteWarnings(
  { body, formOfSlot }: ReadContext,
  slotOf: Uint16Array,
  form?: BeadForm,
): readonly RouteWarning[] {
  const known = body.palette.length
  const missing = beadsOfSlots(slotOf, (slot) => slot >= known)
  const other = beadsOfSlots(
    slotOf,
    (slot) => form !== undefined && slot < known && formOfSlot(slot, form).id !== form.id,
  )
  return [
    ...(missing.beads.length === 0
      ? []
      : [
          {
            code: 'slot-without-bead',
            severity: 'warning' as const,
            message: `The palette has no bead for slot ${missing.letters}; the panel's own form is reckoned with.`,
            next: 'Add the slot to the palette, or paint these beads in another slot.',
            beads: missing.beads,
          },
        ]),
    ...(other.beads.length === 0
      ? []
      : [
          {
            code: 'mixed-forms',
            severity: 'note' as const,
            message: `Slot ${other.letters} takes beads of another form than the panel's; size and thread are reckoned at the panel's form.`,
            next: 'Weigh and hole fill go by each slot’s own form; measure the finished size.',
            beads: other.beads,
          },
        ]),
  ]
}

function beadsOfSlots(slotOf: Uint16Array, isMeant: (slot: number) => boolean) {
  const meant = new Map<number, boolean>()
  const beads: number[] = []
  for (let bead = 0; bead < slotOf.length; bead += 1) {
    const slot = slotOf[bead] ?? 0
    let is = meant.get(slot)
    if (is === undefined) {
      is = isMeant(slot)
      meant.set(slot, is)
    }
    if (is && beads.length < MAX_NAMED) beads.push(bead)
  }
  const slots = [...meant].filter(([, is]) => is).map(([slot]) => slot)
  const letters = slots
    .sort((a, b) => a - b)
    .slice(0, 8)
    .map(slotLabel)
    .join(', ')
  return { beads, letters }
}
