import type { BillLine } from '../design/bill.ts'
import { err, ok, type Result } from '../result.ts'
import { type Lot, lotsByMaterial } from './lot.ts'
import { type MaterialNeed, needsPerUnit, unassignedKeys } from './material-need.ts'
import type { StockMovement } from './movement.ts'
import { openStock } from './open-stock.ts'

/** What is missing of a material, in its unit, and the units it allows as it is. */
export type MakeShortage = Readonly<{ materialId: string; short: number; units: number }>

/** Why a make cannot be planned: keys without a material, or stock that does not reach. */
export type MakeRefusal =
  | Readonly<{ kind: 'unassigned'; keys: readonly string[] }>
  | Readonly<{ kind: 'short'; units: number; shortages: readonly MakeShortage[] }>

/**
 * The movements that making `units` of a design takes out of stock.
 *
 * Where lots matter each unit's share comes from one lot, the ends of lots used up first and equal
 * lots oldest first; elsewhere the oldest lots are emptied first. All or nothing: when any material
 * falls short there are no movements, but what is short (as in `coverOrders`) and the units possible.
 *
 * @param bill of one unit (`billOfMaterials`, or a kit's)
 * @param lots with `onHand` as what may be taken: what is available, or the lots a promise holds
 * @param units whole, above 0
 * @returns movements below 0, at most one a lot, by material in order of the bill
 * @example 4 units of 1500 mg from lots of 3200 and 9000 mg -> -3000 and -3000
 */
export function planMake(
  bill: readonly BillLine[],
  lots: readonly Lot[],
  units: number,
): Result<readonly StockMovement[], MakeRefusal> {
  const keys = unassignedKeys(bill)
  if (keys.length > 0) return err({ kind: 'unassigned', keys })
  const lotsOf = lotsByMaterial(lots)
  const takings = needsPerUnit(bill).map((need) => take(need, lotsOf, units))
  const shortages = takings.map((taking) => taking.shortage).filter(({ short }) => short > 0)
  if (shortages.length === 0) return ok(takings.flatMap((taking) => taking.movements))
  const possible = Math.min(...shortages.map((shortage) => shortage.units))
  return err({ kind: 'short', units: possible, shortages })
}

type Taking = Readonly<{ shortage: MakeShortage; movements: readonly StockMovement[] }>

function take(
  { materialId, lotsMatter, quantity }: MaterialNeed,
  lotsOf: ReadonlyMap<string, readonly Lot[]>,
  units: number,
): Taking {
  const make = { lineId: '', units }
  const lots = lotsOf.get(materialId) ?? []
  const stock = openStock({ lotsMatter, lots, reservations: [], reserving: [] })
  const answer = stock.ask(make, quantity)
  stock.hold(make, quantity, 'all')
  const draws = stock.draws().get(make.lineId) ?? []
  return {
    shortage: { materialId, short: answer.short, units: answer.units },
    movements: draws.map((draw) => ({ materialId, lotId: draw.lotId, quantity: -draw.quantity })),
  }
}
