import { type Cover, coverOrders } from '../../shared-core/stock/cover.ts'
import { type BillBook, openBills } from './bills.ts'
import { type Market, readMarket } from './market.ts'
import { type OpenLine, toCoverLines } from './promises.ts'
import { listCoreLots } from './store/material-rows.ts'
import type { View } from './store/view.ts'

/** Promises covered from what the store holds, with what is needed to word it. */
export type CoveredPromises = Readonly<{ cover: Cover; bills: BillBook; market: Market }>

/** Reads stock and offers and covers lines, given in the order they were entered. */
export async function coverPromises(
  view: View,
  lines: readonly OpenLine[],
): Promise<CoveredPromises> {
  const bills = await openBills(view, lines)
  const lots = await listCoreLots(view.trx)
  const market = await readMarket(view)
  const cover = coverOrders({ lines: toCoverLines(lines, bills), lots, offers: market.offers })
  return { cover, bills, market }
}
