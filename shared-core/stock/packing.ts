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
  const row = packing.placed[packing.sizes.indexOf(size)]
  return row ? row.reduce((sum, count) => sum + count, 0) : 0
}

/** The packing with `counts[l]` more shares of `size` in each lot (fewer where below 0). */
export function withShares(packing: Packing, size: number, counts: readonly number[]): Packing {
  const at = packing.sizes.indexOf(size)
  const free = packing.free.map((left, lot) => left - size * (counts[lot] ?? 0))
  if (at < 0) {
    return {
      ...packing,
      free,
      sizes: [...packing.sizes, size],
      placed: [...packing.placed, counts],
    }
  }
  const placed = packing.placed.map((row, s) =>
    s === at ? row.map((count, lot) => count + (counts[lot] ?? 0)) : row,
  )
  return { ...packing, free, placed }
}

/** The packing with `units` shares of `size` taken out again, from the youngest lots first. */
export function takeBack(packing: Packing, size: number, units: number): Packing {
  const row = packing.placed[packing.sizes.indexOf(size)] ?? []
  let left = units
  const counts = row.map(() => 0)
  for (let lot = row.length - 1; lot >= 0; lot--) {
    const taken = Math.min(left, row[lot] ?? 0)
    counts[lot] = -taken
    left -= taken
  }
  return units === 0 ? packing : withShares(packing, size, counts)
}
