import type { Packing } from './packing.ts'

/**
 * More shares of `size` than this cannot fit beside those placed, however all are arranged.
 *
 * For every divisor d, a lot of capacity c holds at most floor(c / d) whole d's and a share of size s
 * takes floor(s / d) of them; d = 1 compares the plain totals, d = a size at hand counts the ends of
 * lots that are too small.
 */
export function boundMore({ capacity, sizes, placed }: Packing, size: number): number {
  const counts = placed.map((row) => row.reduce((sum, count) => sum + count, 0))
  const bounds = [1, size, ...sizes]
    .filter((divisor) => divisor <= size)
    .map((divisor) => {
      const room = capacity.reduce((sum, lot) => sum + Math.floor(lot / divisor), 0)
      const used = sizes.reduce((sum, s, i) => sum + (counts[i] ?? 0) * Math.floor(s / divisor), 0)
      return Math.floor((room - used) / Math.floor(size / divisor))
    })
  return Math.max(0, Math.min(...bounds))
}
