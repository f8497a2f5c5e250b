import { coverOrders, type LineCover } from '../../../shared-core/stock/cover.ts'
import { needsPerUnit } from '../../../shared-core/stock/material-need.ts'
import type { Reservation } from '../../../shared-core/stock/reservation.ts'
import { calendarDate } from '../../../shared-core/units/calendar-date.ts'
import { billByCore } from './bill-by-core.ts'
import { type ChartOnHand, mudflat, tidewrack } from './design-by-core.ts'
import { job, today } from './job.ts'
import type { StockFacts } from './stock-facts.ts'

/** Both promises covered by the core: the pairs' line, and what the band promised before them holds. */
export function coverByCore(
  stock: StockFacts,
): Readonly<{ pairs: LineCover; heldByBand: readonly Reservation[] }> {
  const line = (chart: ChartOnHand, entry: number, units: number) => ({
    lineId: chart.name,
    dueOn: calendarDate(today),
    entry,
    units,
    needs: needsPerUnit(billByCore(chart, stock)),
  })
  const cover = coverOrders({
    lines: [line(mudflat, 1, 1), line(tidewrack, 2, job.pairs)],
    lots: stock.lots,
    offers: stock.offers,
  })
  const pairs = cover.lines.find(({ lineId }) => lineId === tidewrack.name)
  if (pairs === undefined) throw new Error('The core covers no such line.')
  const heldByBand = cover
    .drawsOf(mudflat.name)
    .flatMap(({ materialId, draws }) =>
      draws.map(({ lotId, quantity }) => ({ materialId, lotId, quantity, lineId: mudflat.name })),
    )
  return { pairs, heldByBand }
}
