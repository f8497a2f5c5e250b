import { type Cover, coverOrders } from '../../shared-core/stock/cover.ts'
import { type BillBook, openBills } from './bills.ts'
import { type OpenLine, toCoverLines, toReservations } from './promises.ts'
import { listHolds } from './store/bench-rows.ts'
import { listCoreLots } from './store/material-rows.ts'
import type { View } from './store/view.ts'

/** Promises covered from what the store holds, with the bills they rest on. */
export type CoveredPromises = Readonly<{ cover: Cover; bills: BillBook }>

/**
 * Reads the stock and covers lines, given in the order they were entered.
 *
 * Without offers: what a shortage would cost is worked out where it is shown, for the few that are.
 */
export async function coverPromises(
  view: View,
  lines: readonly OpenLine[],
): Promise<CoveredPromises> {
  const bills = await openBills(view, lines)
  const lots = await listCoreLots(view.trx)
  const reservations = toReservations(await listHolds(view))
  return { cover: coverOrders({ lines: toCoverLines(lines, bills), lots, reservations }), bills }
}
