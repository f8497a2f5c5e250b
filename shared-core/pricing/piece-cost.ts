import { assert } from '../assert.ts'
import type { CostSheet } from '../costing/cost-sheet.ts'
import type { CurrencyCode } from '../units/currency.ts'
import type { DurationS } from '../units/duration.ts'

/**
 * What one unit costs to make, as pricing needs it.
 *
 * `costMinor` is the whole unit cost, labour within it; `labourMinor` is the part the maker pays
 * herself for `benchSeconds` at the bench. Whole minor units, 0 or more.
 */
export type PieceCost = Readonly<{
  currency: CurrencyCode
  costMinor: number
  labourMinor: number
  benchSeconds: DurationS
}>

/** Throws unless the cost is whole, not negative and in the currency of the channel. */
export function assertPieceCost(cost: PieceCost, currency: CurrencyCode): void {
  assert(cost.currency === currency, `a cost in ${currency}, got ${cost.currency}`)
  assert(Number.isSafeInteger(cost.costMinor), `a whole cost, got ${cost.costMinor}`)
  assert(Number.isSafeInteger(cost.labourMinor), `whole labour, got ${cost.labourMinor}`)
  assert(cost.labourMinor >= 0 && cost.benchSeconds >= 0, 'labour from zero up')
  assert(cost.labourMinor <= cost.costMinor, 'labour within the cost')
}

/** What pricing needs of a cost sheet. */
export function pieceCostOf(sheet: CostSheet, currency: CurrencyCode): PieceCost {
  return {
    currency,
    costMinor: sheet.costMinor,
    labourMinor: sheet.byGroup.labour,
    benchSeconds: sheet.benchSeconds,
  }
}
