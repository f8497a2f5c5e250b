import type { Stripes } from './stripes.ts'

/**
 * The closed lines round a stack of stripes, as corners `[x, level, x, level ...]`, clockwise round
 * what is covered (y down), so that holes run the other way.
 *
 * One sweep from the top: between two stripes an edge lies wherever just one of them covers. A corner
 * is made only where the line turns; where two covered parts touch at a corner the lines keep apart.
 */
export function traceLoops(stripes: Stripes): readonly Int32Array[] {
  const sweep = new Sweep()
  for (let level = 0; level <= stripes.count; level += 1) sweep.crossLevel(stripes, level)
  return sweep.loops()
}

/** A stripe's interval edges and, beside each, the corner its upright line starts from or runs to. */
type Stripe = { readonly edges: number[]; readonly ends: number[]; length: number }

/** The sweep's state: the stripes on both sides of a level, and the corners met so far with the one each leads to. */
class Sweep {
  #above: Stripe = { edges: [], ends: [], length: 0 }
  #below: Stripe = { edges: [], ends: [], length: 0 }
  /** The corner the level line from the left comes from or runs to, -1 where there is none. */
  #pending = -1
  #level = 0
  readonly #xs: number[] = []
  readonly #levels: number[] = []
  readonly #next: number[] = []

  /** Meets every edge at a level, from the left. */
  crossLevel(stripes: Stripes, level: number): void {
    const [above, below] = [this.#above, this.#below]
    below.length = level < stripes.count ? stripes.read(level, below.edges) : 0
    this.#level = level
    this.#pending = -1
    for (let i = 0, j = 0; i < above.length || j < below.length; ) {
      const upper = i < above.length ? (above.edges[i] ?? Infinity) : Infinity
      const lower = j < below.length ? (below.edges[j] ?? Infinity) : Infinity
      if (upper < lower) {
        this.#endAbove(upper, i)
        i += 1
      } else if (lower < upper) {
        below.ends[j] = this.#beginBelow(lower, i)
        j += 1
      } else {
        below.ends[j] = this.#crossBoth(upper, i, j)
        i += 1
        j += 1
      }
    }
    this.#above = below
    this.#below = above
  }

  loops(): readonly Int32Array[] {
    const isDone = new Uint8Array(this.#next.length)
    const loops: Int32Array[] = []
    for (let start = 0; start < isDone.length; start += 1) {
      if (isDone[start] === 0) loops.push(this.#loopFrom(start, isDone))
    }
    return loops
  }

  /** An upright line above ends here: the level line turns up or comes down. */
  #endAbove(x: number, i: number): void {
    const corner = this.#addCorner(x)
    this.#joinLevel(i, corner)
    this.#joinUpright(i, corner)
    this.#pending = this.#pending >= 0 ? -1 : corner
  }

  /** An upright line below begins here; returns its corner. */
  #beginBelow(x: number, i: number): number {
    const corner = this.#addCorner(x)
    this.#joinLevel(i, corner)
    this.#pending = this.#pending >= 0 ? -1 : corner
    return corner
  }

  /** Upright lines above and below meet: one line that goes straight on, or two parts that touch at a corner. */
  #crossBoth(x: number, i: number, j: number): number {
    if (i % 2 === j % 2) return this.#above.ends[i] ?? -1
    const [first, second] = [this.#addCorner(x), this.#addCorner(x)]
    this.#joinLevel(i, first)
    this.#pending = second
    // The part above lies to the left or to the right; each part keeps a corner of its own.
    const isAboveLeft = i % 2 === 1
    this.#joinUpright(i, isAboveLeft ? first : second)
    return isAboveLeft ? second : first
  }

  #addCorner(x: number): number {
    this.#xs.push(x)
    this.#levels.push(this.#level)
    return this.#next.push(-1) - 1
  }

  /** A lower edge runs left, an upper edge right: between edges `i - 1` and `i` above, odd means covered above. */
  #joinLevel(i: number, corner: number): void {
    if (this.#pending < 0) return
    if (i % 2 === 1) this.#next[corner] = this.#pending
    else this.#next[this.#pending] = corner
  }

  /** Right edges run down, left edges up. */
  #joinUpright(i: number, corner: number): void {
    const end = this.#above.ends[i] ?? -1
    if (i % 2 === 1) this.#next[end] = corner
    else this.#next[corner] = end
  }

  #loopFrom(start: number, isDone: Uint8Array): Int32Array {
    const points: number[] = []
    for (let corner = start; isDone[corner] === 0; corner = this.#next[corner] ?? start) {
      isDone[corner] = 1
      points.push(this.#xs[corner] ?? 0, this.#levels[corner] ?? 0)
    }
    return Int32Array.from(points)
  }
}
