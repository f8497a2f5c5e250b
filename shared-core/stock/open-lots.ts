import { emptyPacking, type Packing, total } from './packing.ts'

/**
 * The lots of one material with the shares placed in them so far, changed in place.
 *
 * The plain case of covering thousands of orders, where shares simply fit into the room that is
 * left, allocates nothing; where all has to be packed anew, `packing` hands the state to the search
 * and `replace` takes its answer.
 */
export class OpenLots {
  private free: number[]
  private sizes: number[] = []
  private placed: number[][] = []
  private readonly capacity: readonly number[]
  private readonly counts: number[]
  /** Room left over all lots, in the material's unit. */
  freeTotal: number

  constructor(capacity: readonly number[]) {
    const { free } = emptyPacking(capacity)
    this.capacity = free
    this.free = [...free]
    this.counts = free.map(() => 0)
    this.freeTotal = total(free)
  }

  /**
   * Finds room for shares of `size`, best fit first as `fillSmallest`, and places none yet.
   *
   * @returns how many of `wanted` fit into the room as it is
   */
  fit(size: number, wanted: number): number {
    const { counts, free } = this
    counts.fill(0)
    let left = wanted
    while (left > 0) {
      let lot = -1
      let least = Number.POSITIVE_INFINITY
      for (let at = 0; at < free.length; at++) {
        const room = free[at] as number
        if (room >= size && room < least && counts[at] === 0) {
          lot = at
          least = room
        }
      }
      if (lot < 0) break
      const fits = Math.min(left, Math.floor(least / size))
      counts[lot] = fits
      left -= fits
    }
    return wanted - left
  }

  /** Places `units` of the shares last fitted, oldest lots first. */
  place(size: number, units: number): void {
    if (units === 0) return
    const row = this.rowOf(size)
    let left = units
    for (let lot = 0; lot < this.free.length; lot++) {
      const shares = Math.min(left, this.counts[lot] as number)
      row[lot] = (row[lot] as number) + shares
      this.free[lot] = (this.free[lot] as number) - size * shares
      left -= shares
    }
    this.freeTotal -= size * units
  }

  /** What is placed, as the search takes it; good until the next change. */
  packing(): Packing {
    const { capacity, free, sizes, placed } = this
    return { capacity, free, sizes, placed }
  }

  /** Takes what the search found. */
  replace({ free, sizes, placed }: Packing): void {
    this.free = [...free]
    this.sizes = [...sizes]
    this.placed = placed.map((row) => [...row])
    this.freeTotal = total(free)
  }

  private rowOf(size: number): number[] {
    const at = this.sizes.indexOf(size)
    if (at >= 0) return this.placed[at] as number[]
    const row = this.free.map(() => 0)
    this.sizes.push(size)
    this.placed.push(row)
    return row
  }
}
