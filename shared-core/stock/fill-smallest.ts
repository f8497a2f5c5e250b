/**
 * Shares of one size dealt to lots, best fit first: the lot with the least room that still holds one.
 *
 * Uses up the ends of lots and leaves full ones whole. Lots with equal room are filled in the order
 * given (oldest first). For a single size every order of lots gives the most shares, so only the
 * choice of lots depends on this rule.
 *
 * @param free room per lot in the material's unit
 * @param size of one share, above 0
 * @param wanted shares at most
 * @returns shares per lot, in the order of `free`
 * @example fillSmallest([29, 20], 10, 3) -> [1, 2]
 */
export function fillSmallest(free: readonly number[], size: number, wanted: number): number[] {
  const counts = free.map(() => 0)
  let left = wanted
  while (left > 0) {
    const lot = smallestThatHolds(free, size, counts)
    if (lot < 0) break
    const fits = Math.min(left, Math.floor((free[lot] ?? 0) / size))
    counts[lot] = fits
    left -= fits
  }
  return counts
}

/** The untouched lot with the least room of `size` or more; -1 for none. */
function smallestThatHolds(
  free: readonly number[],
  size: number,
  counts: readonly number[],
): number {
  let found = -1
  let least = Number.POSITIVE_INFINITY
  for (let lot = 0; lot < free.length; lot++) {
    const room = free[lot] ?? 0
    if (room >= size && room < least && counts[lot] === 0) {
      found = lot
      least = room
    }
  }
  return found
}
