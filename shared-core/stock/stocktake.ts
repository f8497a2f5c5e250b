import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import type { Lot } from './lot.ts'
import type { StockMovement } from './movement.ts'

/** What was found of a lot when it was counted or weighed (net of its tare), in the material's unit. */
export type CountedLot = Readonly<{ lotId: string; quantity: number }>

/** A lot's books against what was found: `difference` is found less books. */
export type StocktakeLine = Readonly<{
  lotId: string
  materialId: string
  books: number
  found: number
  difference: number
}>

/** A stocktake: each counted lot, the movements that make the books agree, and lots nobody counted. */
export type Stocktake = Readonly<{
  lines: readonly StocktakeLine[]
  movements: readonly StockMovement[]
  notCounted: readonly string[]
}>

/**
 * The differences of a stocktake, and the movements that put the books right.
 *
 * A lot that agrees gets no movement, a lot not counted keeps its books.
 *
 * @returns refused, with nothing decided, for a lot that does not exist, is counted twice, or a
 *   quantity that is not whole or below 0; `field` is `counted.<index>`
 * @example books 5200 mg, found 5150 mg -> a movement of -50
 */
export function stocktake(
  lots: readonly Lot[],
  counted: readonly CountedLot[],
): Result<Stocktake, Refusal> {
  const byId = new Map(lots.map((lot) => [lot.lotId, lot]))
  const lines = new Map<string, StocktakeLine>()
  for (const [index, { lotId, quantity: found }] of counted.entries()) {
    const lot = byId.get(lotId)
    const refuse = refusalAt(`counted.${index}`)
    if (!lot)
      return err(
        refuse('lot-unknown', `There is no lot ${lotId}.`, 'Choose one of the lots in stock.'),
      )
    if (lines.has(lotId))
      return err(
        refuse(
          'lot-counted-twice',
          `Lot ${lotId} is counted twice.`,
          'Enter the sum of both counts once.',
        ),
      )
    if (!Number.isSafeInteger(found) || found < 0) {
      return err(
        refuse(
          'count-not-whole',
          `Lot ${lotId} was given as ${found}.`,
          'Enter a whole quantity of 0 or more.',
        ),
      )
    }
    const { materialId, onHand: books } = lot
    lines.set(lotId, { lotId, materialId, books, found, difference: found - books })
  }
  return ok(settle(lots, [...lines.values()]))
}

function settle(lots: readonly Lot[], lines: readonly StocktakeLine[]): Stocktake {
  const counted = new Set(lines.map((line) => line.lotId))
  return {
    lines,
    movements: lines
      .filter((line) => line.difference !== 0)
      .map(({ materialId, lotId, difference }) => ({ materialId, lotId, quantity: difference })),
    notCounted: lots.map((lot) => lot.lotId).filter((lotId) => !counted.has(lotId)),
  }
}

function refusalAt(field: string) {
  return (code: string, message: string, next: string): Refusal => ({ code, message, next, field })
}
