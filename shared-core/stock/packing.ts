/**
 * Units' shares of one material packed into its lots, a share never split.
 *
 * `capacity` and `free` are per lot, oldest lot first, in the material's unit. `placed[s][l]` is the
 * number of shares of `sizes[s]` in lot `l`: sizes x lots. Shares of one size are alike, whoever
 * they are for, so they are counted and not listed.
 */
export type Packing = Readonly<{
  capacity: readonly number[]
  free: readonly number[]
  sizes: readonly number[]
  placed: readonly (readonly number[])[]
}>

/** Lots with nothing placed in them; a capacity below 0 counts as 0. */
export function emptyPacking(capacity: readonly number[]): Packing {
  const usable = capacity.map((quantity) => Math.max(0, quantity))
  return { capacity: usable, free: usable, sizes: [], placed: [] }
}

/** Shares of a size placed so far, over all lots. */
export function placedOf(packing: Packing, size: number): number {
  return total(packing.placed[packing.sizes.indexOf(size)] ?? [])
}

/** The packing with `counts[l]` more shares of `size` in each lot (fewer where below 0). */
export function withShares(packing: Packing, size: number, counts: readonly number[]): Packing {
  const { capacity, sizes, placed } = packing
  // Copied by loops: this is the innermost step of covering thousands of orders.
  const free = packing.free.slice()
  for (let lot = 0; lot < free.length; lot++)
    free[lot] = (free[lot] ?? 0) - size * (counts[lot] ?? 0)
  const at = sizes.indexOf(size)
  if (at < 0) return { capacity, free, sizes: [...sizes, size], placed: [...placed, counts] }
  const row = (placed[at] ?? []).slice()
  for (let lot = 0; lot < row.length; lot++) row[lot] = (row[lot] ?? 0) + (counts[lot] ?? 0)
  const rows = placed.slice()
  rows[at] = row
  return { capacity, free, sizes, placed: rows }
}

/** The packing with `units` shares of `size` taken out again, from the youngest lots first. */
export function takeBack(packing: Packing, size: number, units: number): Packing {
  if (units === 0) return packing
  const row = packing.placed[packing.sizes.indexOf(size)] ?? []
  let left = units
  const counts = row.map(() => 0)
  for (let lot = row.length - 1; lot >= 0; lot--) {
    const taken = Math.min(left, row[lot] ?? 0)
    counts[lot] = -taken
    left -= taken
  }
  return withShares(packing, size, counts)
}

/** The sum of quantities or counts. */
export function total(numbers: readonly number[]): number {
  let sum = 0
  for (let i = 0; i < numbers.length; i++) sum += numbers[i] ?? 0
  return sum
}
