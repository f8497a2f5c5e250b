import { type Packing, total } from './packing.ts'

/**
 * More shares of `size` than this cannot fit beside those placed, however all are arranged.
 *
 * For every divisor d, a lot of capacity c holds at most floor(c / d) whole d's and a share of size s
 * takes floor(s / d) of them; d = 1 compares the plain totals, d = a size at hand counts the ends of
 * lots that are too small.
 */
export function boundMore(packing: Packing, size: number): number {
  let bound = Math.min(boundBy(1, packing, size), boundBy(size, packing, size))
  for (const divisor of packing.sizes) {
    if (divisor < size) bound = Math.min(bound, boundBy(divisor, packing, size))
  }
  return Math.max(0, bound)
}

function boundBy(divisor: number, { capacity, sizes, placed }: Packing, size: number): number {
  let room = 0
  // By index: an iterator for each would be a good part of what covering all orders allocates.
  for (let lot = 0; lot < capacity.length; lot++) room += Math.floor((capacity[lot] ?? 0) / divisor)
  for (let s = 0; s < sizes.length; s++) {
    const parts = Math.floor((sizes[s] ?? 0) / divisor)
    if (parts > 0) room -= parts * total(placed[s] ?? [])
  }
  return Math.floor(room / Math.floor(size / divisor))
}
