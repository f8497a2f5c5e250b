/**
 * A second way to the same answers, written to be plainly right rather than fast: every share is put
 * into every lot in turn.
 */
export function fitsByTrying(capacity: readonly number[], shares: readonly number[]): boolean {
  const [first, ...rest] = shares
  if (first === undefined) return true
  return capacity.some(
    (room, lot) => room >= first && fitsByTrying(capacity.with(lot, room - first), rest),
  )
}

export function mostByTrying(
  capacity: readonly number[],
  placed: readonly number[],
  size: number,
  wanted: number,
): number {
  let units = 0
  while (
    units < wanted &&
    fitsByTrying(capacity, [...placed, ...Array<number>(units + 1).fill(size)])
  )
    units++
  return units
}
