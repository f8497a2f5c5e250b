import type { BeadFinish } from '../../../../shared-core/beads/bead-form.ts'
import { slotKey } from '../../../../shared-core/design/bill.ts'
import type { PaletteSlot } from '../../../../shared-core/design/design.ts'
import type { Fillings, MaterialRow } from './open-design.ts'

/** A slot of the palette and the bead that fills it, if one does; its look is the bead's, else the chart's own. */
export type SlotBead = Readonly<{
  slot: PaletteSlot
  material: MaterialRow | undefined
  hex: string
  finish: BeadFinish
}>

/** What fills each slot in a colourway, in order of the palette. */
export function slotBeads(
  palette: readonly PaletteSlot[],
  fillings: Fillings,
  materials: readonly MaterialRow[],
): readonly SlotBead[] {
  const byId = new Map(materials.map((material) => [material.id, material]))
  return palette.map((slot) => {
    const material = byId.get(fillings[slotKey(slot.label)] ?? '')
    return {
      slot,
      material,
      hex: material?.colourHex ?? slot.colourHex,
      finish: material?.finish ?? slot.finish,
    }
  })
}
