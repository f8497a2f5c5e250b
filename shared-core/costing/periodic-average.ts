import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import { drawCost, type LotCost } from '../stock/lot-value.ts'
import { type Fraction, fraction, multiplyFractions } from '../units/fraction.ts'
import {
  assertEvents,
  type IssueCost,
  type IssueCosts,
  notEnoughStock,
  type StockEvent,
} from './stock-event.ts'

/** What issues cost by one average over a period, with that average per unit. */
export type PeriodicCosts = IssueCosts & Readonly<{ averageUnitCost: Fraction }>

/**
 * Weighted average over a whole period: all that was received, its cost over its quantity.
 *
 * The order of events within the period does not matter; what was at hand at its start is its first
 * receipt. Refusal `not-enough-stock` when more was issued than received over the period.
 *
 * @source IAS 2, paragraph 27
 * @example 10 at 4.00, issue 6, 8 at 5.50, issue 7 -> 60.67 in all
 */
export function periodicAverageCosts(
  events: readonly StockEvent[],
): Result<PeriodicCosts, Refusal> {
  assertEvents(events)
  const received = total(events)
  let issued = 0
  const issues: IssueCost[] = []
  for (const [index, event] of events.entries()) {
    if (event.kind === 'receive') continue
    if (issued + event.quantity > received.costQuantity) {
      return err(notEnoughStock(index + 1, event.quantity, received.costQuantity - issued))
    }
    issues.push(partOf(received, issued, event.quantity))
    issued += event.quantity
  }
  const averageUnitCost =
    received.costQuantity === 0 ? fraction(0) : fraction(received.costMinor, received.costQuantity)
  const all = partOf(received, 0, issued)
  return ok({
    averageUnitCost,
    issues,
    issuedExact: all.exact,
    issuedMinor: all.costMinor,
    left: partOf(received, issued, received.costQuantity - issued),
  })
}

function partOf(whole: LotCost, before: number, quantity: number): IssueCost {
  if (quantity === 0) return { quantity: 0, exact: fraction(0), costMinor: 0 }
  const unitCost = fraction(whole.costMinor, whole.costQuantity)
  const exact = multiplyFractions(unitCost, fraction(quantity))
  return { quantity, exact, costMinor: drawCost(whole, before, quantity) }
}

function total(events: readonly StockEvent[]): LotCost {
  let [costMinor, costQuantity] = [0, 0]
  for (const event of events) {
    if (event.kind === 'issue') continue
    costMinor += event.costMinor
    costQuantity += event.quantity
  }
  return { costMinor, costQuantity }
}
