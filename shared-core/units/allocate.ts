/**
 * Shares a whole total over lines in proportion to their weights, so that the parts sum exactly.
 *
 * Largest remainder (Hamilton): each line gets the floor of its quota, what is left goes one unit
 * each to the largest fractions, ties to the earlier line. A negative total is shared as its
 * absolute value and negated.
 *
 * @param total whole units (minor units of money, mg, beads)
 * @param weights whole and not negative, one a line; only their proportion matters
 * @throws RangeError for weights that are negative, not whole, or all zero while the total is not.
 * @source Hamilton's method of apportionment
 * @example allocate(1250, [50, 60, 90]) // [313, 375, 562]
 */
export function allocate(total: number, weights: readonly (number | bigint)[]): readonly number[] {
  if (!Number.isSafeInteger(total)) throw new RangeError(`allocate: ${total} is not whole`)
  const exact = weights.map(wholeWeight)
  const sum = exact.reduce((a, b) => a + b, 0n)
  if (total === 0) return exact.map(() => 0)
  if (sum === 0n) throw new RangeError(`allocate: no weight to share ${total} by`)
  const magnitude = BigInt(Math.abs(total))
  const floors = exact.map((weight) => (magnitude * weight) / sum)
  const remainders = exact.map((weight) => (magnitude * weight) % sum)
  const left = magnitude - floors.reduce((a, b) => a + b, 0n)
  const lucky = new Set(byLargest(remainders).slice(0, Number(left)))
  const sign = total < 0 ? -1 : 1
  return floors.map((floor, line) => sign * (Number(floor) + (lucky.has(line) ? 1 : 0)) || 0)
}

/** Positions ordered from the largest value to the smallest; equal values keep their order. */
export function byLargest(values: readonly bigint[]): readonly number[] {
  const order = values.map((value, position) => ({ value, position }))
  order.sort((a, b) => (a.value === b.value ? a.position - b.position : a.value < b.value ? 1 : -1))
  return order.map((entry) => entry.position)
}

function wholeWeight(weight: number | bigint): bigint {
  if (typeof weight === 'number' && !Number.isSafeInteger(weight)) {
    throw new RangeError(`allocate: weight ${weight} is not whole`)
  }
  if (weight < 0) throw new RangeError(`allocate: weight ${weight} is negative`)
  return BigInt(weight)
}
