import { availableLots } from '../../shared-core/stock/available.ts'
import { type Cover, type CoverLine, coverOrders } from '../../shared-core/stock/cover.ts'
import type { Lot } from '../../shared-core/stock/lot.ts'
import type { Reservation } from '../../shared-core/stock/reservation.ts'
import { calendarDate } from '../../shared-core/units/calendar-date.ts'
import { type Promises, readPromises, toCoverLine } from './promises.ts'
import { type LotRow, listLots } from './store/material-rows.ts'
import type { View } from './store/view.ts'

/** All promises covered from all lots, and what is left for anything new. */
export type Availability = Readonly<{
  promises: Promises
  lotRows: readonly LotRow[]
  /** Lots less what promises hold; with a line's id, what that line holds stays in. */
  availableTo: (lineId?: string) => readonly Lot[]
}>

/** Covers all open promises and says what stock is left beside them. */
export async function readAvailability(view: View): Promise<Availability> {
  const promises = await readPromises(view)
  const lotRows = await listLots(view.trx)
  const lots = lotRows.map(toCoreLot)
  const lines = promises.lines.map((line, entry) => toCoverLine(line, promises.bills, entry))
  const cover = coverOrders({ lines, lots })
  return {
    promises,
    lotRows,
    availableTo: (lineId) =>
      availableLots(
        lots,
        lines.filter((line) => line.lineId !== lineId).flatMap((line) => holdings(line, cover)),
      ),
  }
}

/** A lot as the core knows it. */
export function toCoreLot(row: LotRow): Lot {
  return {
    lotId: row.id,
    materialId: row.material_id,
    onHand: row.on_hand,
    ...(row.bought_on === null ? {} : { boughtOn: calendarDate(row.bought_on) }),
  }
}

function holdings(line: CoverLine, cover: Cover): readonly Reservation[] {
  return cover
    .drawsOf(line.lineId)
    .flatMap(({ materialId, draws }) =>
      draws.map(({ lotId, quantity }) => ({ materialId, lotId, quantity, lineId: line.lineId })),
    )
}
