import { assert } from '../assert.ts'
import type { Refusal } from '../refusal.ts'
import type { Fraction } from '../units/fraction.ts'

/**
 * One event in the history of a material, in order: quantity whole and above 0 in the material's
 * unit; the cost of a receipt is the landed cost of all of it, in whole minor units from 0 up.
 */
export type StockEvent =
  | Readonly<{ kind: 'receive'; quantity: number; costMinor: number }>
  | Readonly<{ kind: 'issue'; quantity: number }>

/** The cost of one issue: exactly, and in whole minor units such that all issues and the rest add up. */
export type IssueCost = Readonly<{ quantity: number; exact: Fraction; costMinor: number }>

/**
 * What a history of receipts and issues cost.
 *
 * `issues` in their order; `left` is what remains. Issued and left add up to what was received, in
 * quantity, exactly in cost, and in whole minor units.
 */
export type IssueCosts = Readonly<{
  issues: readonly IssueCost[]
  issuedExact: Fraction
  issuedMinor: number
  left: IssueCost
}>

/** Throws for a quantity or a cost that no event can have: a bug. */
export function assertEvents(events: readonly StockEvent[]): void {
  for (const event of events) {
    const whole = Number.isSafeInteger(event.quantity) && event.quantity > 0
    assert(whole, `a whole quantity above 0, got ${event.quantity}`)
    if (event.kind === 'issue') continue
    const possible = Number.isSafeInteger(event.costMinor) && event.costMinor >= 0
    assert(possible, `a whole cost from 0 up, got ${event.costMinor}`)
  }
}

/** Refusal `not-enough-stock`: an issue, counted from 1 among the events, takes more than there is. */
export function notEnoughStock(line: number, wanted: number, available: number): Refusal {
  return {
    code: 'not-enough-stock',
    message: `Event ${line} issues ${wanted} where ${available} are at hand.`,
    next: 'Enter the receipt that is missing, or lower what was issued.',
    line,
  }
}
