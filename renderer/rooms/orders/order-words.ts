import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import type { Format } from '../../app/format.ts'
import type { BadgeTone } from '../../ui/badge.tsx'

export type Order = CallOutput<'orders.read'>['order']
export type OrderCover = CallOutput<'orders.cover'>
export type LineCover = OrderCover['lines'][number]

/** An order's state in a word, with the tone of its shape. */
export const stateWords: Readonly<Record<Order['state'], readonly [BadgeTone, string]>> = {
  open: ['busy', 'Open'],
  ready: ['good', 'Made'],
  closed: ['quiet', 'Closed'],
  cancelled: ['quiet', 'Cancelled'],
}

/** What an order is worth in words: nothing agreed is not worth nothing. */
export function worthOf({ lines, totalMinor }: Order, format: Format): string {
  return lines.every(({ priceMinor }) => priceMinor === null)
    ? 'not agreed'
    : format.money(totalMinor)
}
