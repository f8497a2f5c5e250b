import { coverOrders } from '../../shared-core/stock/cover.ts'
import type { Lot } from '../../shared-core/stock/lot.ts'
import { type Promises, readPromises, toCoverLines } from './promises.ts'
import { listCoreLots } from './store/material-rows.ts'
import type { View } from './store/view.ts'

/** All promises covered from all lots, and what is left for anything new. */
export type Availability = Readonly<{
  promises: Promises
  /** Lots less what promises hold; with a line's id, what that line holds stays in. */
  availableTo: (lineId?: string) => readonly Lot[]
}>

/** Covers all open promises and says what stock is left beside them. */
export async function readAvailability(view: View): Promise<Availability> {
  const promises = await readPromises(view)
  const lots = await listCoreLots(view.trx)
  const cover = coverOrders({ lines: toCoverLines(promises.lines, promises.bills), lots })
  return {
    promises,
    availableTo: (lineId) => {
      // Totals of each lot are enough: dealing them to thousands of lines takes longer than covering them.
      const held = new Map(cover.heldByLot())
      const own = lineId === undefined ? [] : cover.drawsOf(lineId)
      for (const { lotId, quantity } of own.flatMap(({ draws }) => draws)) {
        held.set(lotId, (held.get(lotId) ?? 0) - quantity)
      }
      return lots.map((lot) => ({ ...lot, onHand: lot.onHand - (held.get(lot.lotId) ?? 0) }))
    },
  }
}
