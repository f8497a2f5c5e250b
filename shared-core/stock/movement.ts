/** One line of a lot's history: `quantity` in the material's unit, above 0 into the lot, below 0 out of it. */
export type StockMovement = Readonly<{ materialId: string; lotId: string; quantity: number }>

/**
 * What is on hand of each lot: the sum of its movements, in the material's unit.
 *
 * A lot may come out below 0 when more was used than was recorded: a stocktake puts it right.
 *
 * @throws RangeError when a sum leaves the safe integers
 */
export function onHandByLot(movements: readonly StockMovement[]): ReadonlyMap<string, number> {
  const sums = new Map<string, number>()
  for (const { lotId, quantity } of movements) {
    const sum = (sums.get(lotId) ?? 0) + quantity
    if (!Number.isSafeInteger(sum)) throw new RangeError(`onHandByLot: ${lotId} comes to ${sum}`)
    sums.set(lotId, sum)
  }
  return sums
}

/** The movements that undo these: the same lots, the opposite quantities, last first. */
export function reversed(movements: readonly StockMovement[]): readonly StockMovement[] {
  return movements.map((movement) => ({ ...movement, quantity: -movement.quantity })).reverse()
}
