/** A material's stock against its promises and its low mark, all in its unit. */
export type StockLevel = Readonly<{
  onHand: number
  /** What open promises still need. */
  promised: number
  /** Held for anything else. */
  reserved: number
  /** Warn at or below this much left over; null for never. */
  lowAt: number | null
}>

/**
 * What a material's stock calls for, most urgent first in this order.
 *
 * `short`: promises need `by` more than there is. `out`: nothing is left, though nothing promised is
 * short. `low`: what is left after promises is at or below the low mark, by so much.
 */
export type RestockState =
  | Readonly<{ kind: 'short'; by: number }>
  | Readonly<{ kind: 'out' }>
  | Readonly<{ kind: 'low'; left: number; by: number }>
  | Readonly<{ kind: 'enough'; left: number }>

/**
 * Whether a material is short of its promises, out, low or enough.
 *
 * Left = on hand - promised - reserved. A material with a low mark of null is never low and never out:
 * the maker has said not to warn; short of promises it is always told.
 *
 * @example on hand 4000, promised 3200, low at 1000 -> low, 800 left, 200 below the mark
 */
export function restockState({ onHand, promised, reserved, lowAt }: StockLevel): RestockState {
  const left = onHand - promised - reserved
  if (left < 0 && promised + reserved > 0) return { kind: 'short', by: -left }
  if (lowAt === null) return { kind: 'enough', left }
  if (left <= 0) return { kind: 'out' }
  return left <= lowAt ? { kind: 'low', left, by: lowAt - left } : { kind: 'enough', left }
}
