import { slotLabel } from '../../../../../shared-core/chart/chart.ts'
import { slotKey } from '../../../../../shared-core/design/bill.ts'
import type { PaletteSlot } from '../../../../../shared-core/design/design.ts'
import type { StockBead } from './stock-beads.ts'

/** A colour on its way to a slot: as it is, or the bead of stock that stands for it. */
export type SlotColour = Readonly<{ hex: string; name: string; bead?: StockBead }>

/** Slots in the order of colours, and the materials that fill those with a bead. */
export function paletteOf(
  colours: readonly SlotColour[],
  formId: string,
): Readonly<{
  palette: readonly PaletteSlot[]
  materials: Readonly<Record<string, string>>
}> {
  const palette = colours.map(({ hex, name, bead }, at): PaletteSlot => {
    const label = slotLabel(at)
    if (bead === undefined) return { label, name, formId, colourHex: hex, finish: 'opaque' }
    const finish = bead.finish ?? 'opaque'
    return { label, name: bead.name, formId, colourHex: bead.colourHex, finish }
  })
  const filled = colours.flatMap(({ bead }, at) =>
    bead === undefined ? [] : [[slotKey(slotLabel(at)), bead.id] as const],
  )
  return { palette, materials: Object.fromEntries(filled) }
}
