import { coverOrders } from '../../shared-core/stock/cover.ts'
import type { Lot } from '../../shared-core/stock/lot.ts'
import { type Promises, readPromises, toCoverLines, toReservations } from './promises.ts'
import { listHolds } from './store/bench-rows.ts'
import { listCoreLots } from './store/material-rows.ts'
import type { View } from './store/view.ts'

/** Who asks for stock: an order's line, work at the bench, or nobody yet. */
export type Asking = Readonly<{ lineId?: string | undefined; workId?: string | undefined }>

/** All promises covered from all lots, and what is left for anything new. */
export type Availability = Readonly<{
  promises: Promises
  /** Lots less what promises and work under way hold; what the asking line or work holds stays in. */
  availableTo: (asking?: Asking) => readonly Lot[]
}>

/** Covers all open promises and says what stock is left beside them and beside the bench. */
export async function readAvailability(view: View): Promise<Availability> {
  const promises = await readPromises(view)
  const lots = await listCoreLots(view.trx)
  const holds = await listHolds(view)
  const shelf = holds.filter((hold) => hold.lineId === null)
  const lines = toCoverLines(promises.lines, promises.bills)
  const cover = coverOrders({ lines, lots, reservations: toReservations(holds) })
  return {
    promises,
    availableTo: ({ lineId, workId } = {}) => {
      // Totals of each lot are enough: dealing them to thousands of lines takes longer than covering them.
      const held = new Map(cover.heldByLot())
      const move = (lotId: string, quantity: number) =>
        held.set(lotId, (held.get(lotId) ?? 0) + quantity)
      const own = lineId === undefined ? [] : cover.drawsOf(lineId)
      for (const draw of own.flatMap(({ draws }) => draws)) move(draw.lotId, -draw.quantity)
      for (const hold of shelf) if (hold.workId !== workId) move(hold.lotId, hold.quantity)
      return lots.map((lot) => ({ ...lot, onHand: lot.onHand - (held.get(lot.lotId) ?? 0) }))
    },
  }
}
