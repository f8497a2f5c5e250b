import type { Demand, MaterialStock } from './claim.ts'
import type { Lot } from './lot.ts'
import { lotStock } from './lot-stock.ts'
import { pooledStock } from './pooled-stock.ts'
import type { Reservation } from './reservation.ts'

/** One material's lots (oldest first), who holds them, and the demands of lines with reservations. */
export type StockRequest = Readonly<{
  lotsMatter: boolean
  lots: readonly Lot[]
  reservations: readonly Reservation[]
  reserving: readonly Demand[]
  nodeBudget?: number | undefined
}>

/** Opens a material's stock for promising: kept apart by lots where they matter, pooled elsewhere. */
export function openStock(request: StockRequest): MaterialStock {
  const { lotsMatter, lots, reservations, reserving, nodeBudget } = request
  return lotsMatter
    ? lotStock(lots, reservations, reserving, nodeBudget)
    : pooledStock(lots, reservations)
}
