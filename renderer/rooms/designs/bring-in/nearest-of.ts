import type { GridColour } from '../../../../shared-core/chart/read-pixel-grid.ts'
import { nearestColour } from '../../../../shared-core/colour/nearest-colour.ts'
import type { SlotColour } from '../new/picture/palette-of.ts'
import type { StockBead } from '../new/picture/stock-beads.ts'

/** Each colour with the nearest bead of stock; none where there are no beads to choose from. */
export function nearestOf(
  colours: readonly GridColour[],
  beads: readonly StockBead[],
): readonly SlotColour[] {
  return colours.map(({ hex, name }) => {
    const bead = nearestColour(hex, beads)?.one
    return bead === undefined ? { hex, name } : { hex, name, bead }
  })
}
