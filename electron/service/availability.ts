import { availableLots } from '../../shared-core/stock/available.ts'
import { type Cover, type CoverLine, coverOrders } from '../../shared-core/stock/cover.ts'
import type { Lot } from '../../shared-core/stock/lot.ts'
import type { Reservation } from '../../shared-core/stock/reservation.ts'
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
  const lines = toCoverLines(promises.lines, promises.bills)
  const cover = coverOrders({ lines, lots })
  return {
    promises,
    availableTo: (lineId) =>
      availableLots(
        lots,
        lines.filter((line) => line.lineId !== lineId).flatMap((line) => holdings(line, cover)),
      ),
  }
}

function holdings(line: CoverLine, cover: Cover): readonly Reservation[] {
  return cover
    .drawsOf(line.lineId)
    .flatMap(({ materialId, draws }) =>
      draws.map(({ lotId, quantity }) => ({ materialId, lotId, quantity, lineId: line.lineId })),
    )
}
