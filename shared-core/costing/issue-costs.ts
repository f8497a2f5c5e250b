import type { Refusal } from '../refusal.ts'
import type { Result } from '../result.ts'
import { fifoCosts } from './fifo.ts'
import { movingAverageCosts } from './moving-average.ts'
import { periodicAverageCosts } from './periodic-average.ts'
import type { IssueCosts, StockEvent } from './stock-event.ts'

/** How issues from stock are costed; one method a workshop. IAS 2 does not allow last in, first out. */
export type CostingMethod = 'fifo' | 'moving-average' | 'periodic-average'

/** What each issue of a history costs by the method, and what is left. Refusal `not-enough-stock`. */
export function issueCosts(
  method: CostingMethod,
  events: readonly StockEvent[],
): Result<IssueCosts, Refusal> {
  switch (method) {
    case 'fifo':
      return fifoCosts(events)
    case 'moving-average':
      return movingAverageCosts(events)
    case 'periodic-average':
      return periodicAverageCosts(events)
  }
}
