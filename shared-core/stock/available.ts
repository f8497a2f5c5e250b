import type { Lot } from './lot.ts'
import type { Reservation } from './reservation.ts'

/**
 * Lots with what is available of them: on hand less what is reserved, in the material's unit.
 *
 * Below 0 when more is held than is there. Reservations of lots not given change nothing.
 *
 * @example 5000 mg on hand, 1500 and 800 reserved -> 2700
 */
export function availableLots(
  lots: readonly Lot[],
  reservations: readonly Reservation[],
): readonly Lot[] {
  const held = new Map<string, number>()
  for (const { lotId, quantity } of reservations) {
    held.set(lotId, (held.get(lotId) ?? 0) + quantity)
  }
  return lots.map((lot) => ({ ...lot, onHand: lot.onHand - (held.get(lot.lotId) ?? 0) }))
}
