import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import { drawCost, type LotCost } from '../stock/lot-value.ts'
import { type Fraction, fraction, sumFractions } from '../units/fraction.ts'
import {
  assertEvents,
  type IssueCost,
  type IssueCosts,
  notEnoughStock,
  type StockEvent,
} from './stock-event.ts'

/** One receipt's part in an issue; `receipt` counts the receipts from 0. */
export type Draw = Readonly<{
  receipt: number
  quantity: number
  exact: Fraction
  costMinor: number
}>

/** What issues cost by FIFO, each with the receipts it was taken from. */
export type FifoCosts = Omit<IssueCosts, 'issues'> &
  Readonly<{ issues: readonly (IssueCost & Readonly<{ draws: readonly Draw[] }>)[] }>

/**
 * First in, first out: every issue takes the oldest receipts that are left.
 *
 * Draws of one receipt add up to its cost to the minor unit. Gives the same answer entered as it
 * happens or at the end of a period. Refusal `not-enough-stock`.
 *
 * @source IAS 2, paragraphs 25 and 27
 * @example 10 at 4.00, issue 6, 8 at 5.50, issue 7 -> 24.00 and 32.50
 */
export function fifoCosts(events: readonly StockEvent[]): Result<FifoCosts, Refusal> {
  assertEvents(events)
  const layers: Layer[] = []
  const issues: (IssueCost & Readonly<{ draws: readonly Draw[] }>)[] = []
  for (const [index, event] of events.entries()) {
    if (event.kind === 'receive') {
      const cost = { costMinor: event.costMinor, costQuantity: event.quantity }
      layers.push({ receipt: layers.length, cost, drawn: 0 })
      continue
    }
    const available = atHand(layers)
    if (event.quantity > available) {
      return err(notEnoughStock(index + 1, event.quantity, available))
    }
    const draws = drawFrom(layers, event.quantity)
    issues.push({ ...summed(draws), draws })
  }
  const issued = summed(issues)
  const left = summed(drawFrom(layers, atHand(layers)))
  return ok({ issues, issuedExact: issued.exact, issuedMinor: issued.costMinor, left })
}

type Layer = { readonly receipt: number; readonly cost: LotCost; drawn: number }

function atHand(layers: readonly Layer[]): number {
  return layers.reduce((sum, layer) => sum + layer.cost.costQuantity - layer.drawn, 0)
}

/** Takes the quantity from the oldest layers, marking what is drawn. */
function drawFrom(layers: readonly Layer[], quantity: number): readonly Draw[] {
  const draws: Draw[] = []
  let wanted = quantity
  for (const layer of layers) {
    const taken = Math.min(wanted, layer.cost.costQuantity - layer.drawn)
    if (taken === 0) continue
    draws.push(drawOf(layer, taken))
    layer.drawn += taken
    wanted -= taken
  }
  return draws
}

function drawOf({ receipt, cost, drawn }: Layer, quantity: number): Draw {
  const exact = fraction(BigInt(cost.costMinor) * BigInt(quantity), cost.costQuantity)
  return { receipt, quantity, exact, costMinor: drawCost(cost, drawn, quantity) }
}

function summed(parts: readonly IssueCost[]): IssueCost {
  return {
    quantity: parts.reduce((sum, part) => sum + part.quantity, 0),
    exact: sumFractions(parts.map((part) => part.exact)),
    costMinor: parts.reduce((sum, part) => sum + part.costMinor, 0),
  }
}
