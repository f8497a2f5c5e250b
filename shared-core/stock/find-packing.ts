/** Shares of several sizes to pack: `counts[s]` shares of `sizes[s]`, into lots of `capacity[l]`. */
export type PackingQuestion = Readonly<{
  capacity: readonly number[]
  sizes: readonly number[]
  counts: readonly number[]
}>

/** `found`: shares as sizes x lots, in the question's order. `cut off`: the node budget ended the search. */
export type PackingAnswer =
  | Readonly<{ kind: 'found'; placed: readonly (readonly number[])[]; nodes: number }>
  | Readonly<{ kind: 'none'; nodes: number }>
  | Readonly<{ kind: 'cut off'; nodes: number }>

/**
 * Whether all shares fit into the lots without splitting one, and how: exact unless cut off.
 *
 * Depth-first over lots, smallest first. In each lot only full patterns are tried (none of the
 * shares still to place would fit as well), which loses no answer: a share that fits now can be moved
 * here from a later lot. A branch ends when more room is wasted than there is to spare, or when the
 * same shares were already found not to fit in the same lots. A first search lets no lot waste more
 * than an even part of the room to spare, which finds most packings sooner; only the second is proof
 * that there is none.
 *
 * @param nodeBudget patterns tried at most
 */
export function findPacking(question: PackingQuestion, nodeBudget: number): PackingAnswer {
  const even = new Search(question, Math.floor(nodeBudget / 2), true)
  if (even.fill(0, even.slack)) return { kind: 'found', placed: even.placed, nodes: even.nodes }
  const full = new Search(question, nodeBudget - even.nodes, false)
  const found = full.fill(0, full.slack)
  const nodes = even.nodes + full.nodes
  if (found) return { kind: 'found', placed: full.placed, nodes }
  return { kind: nodes > nodeBudget ? 'cut off' : 'none', nodes }
}

class Search {
  readonly placed: number[][]
  readonly slack: number
  nodes = 0
  private readonly question: PackingQuestion
  private readonly nodeBudget: number
  private readonly isEven: boolean
  private readonly lots: readonly number[]
  private readonly bySize: readonly number[]
  private readonly left: number[]
  private readonly failed = new Set<string>()

  constructor(question: PackingQuestion, nodeBudget: number, isEven: boolean) {
    const { capacity, sizes, counts } = question
    this.question = question
    this.nodeBudget = nodeBudget
    this.isEven = isEven
    this.lots = capacity.map((_, lot) => lot).sort((a, b) => this.room(a) - this.room(b))
    this.bySize = sizes
      .map((_, s) => s)
      .filter((s) => this.count(s) > 0)
      .sort((a, b) => this.size(b) - this.size(a))
    this.left = [...counts]
    this.placed = sizes.map(() => capacity.map(() => 0))
    const wanted = sizes.reduce((sum, size, s) => sum + size * this.count(s), 0)
    this.slack = capacity.reduce((sum, room) => sum + room, 0) - wanted
  }

  /** Packs what is left into the lots from `depth` on; `slack` is the room that may be wasted there. */
  fill(depth: number, slack: number): boolean {
    if (slack < 0) return false
    if (this.left.every((count) => count === 0)) return true
    const lot = this.lots[depth]
    if (lot === undefined) return false
    const key = `${depth}:${this.left.join()}`
    if (this.failed.has(key)) return false
    const fits = this.pattern(depth, 0, this.room(lot), slack)
    if (!fits && this.nodes <= this.nodeBudget) this.failed.add(key)
    return fits
  }

  /** Chooses how many shares of each size, largest first, go into the lot at `depth` that has `room` left. */
  private pattern(depth: number, rank: number, room: number, slack: number): boolean {
    if (++this.nodes > this.nodeBudget) return false
    const s = this.bySize[rank]
    if (s === undefined) {
      if (room > this.mayWaste(depth, slack) || !this.isFull(room)) return false
      return this.fill(depth + 1, slack - room)
    }
    if (room - this.fillable(rank) > this.mayWaste(depth, slack)) return false
    const lot = this.lots[depth] ?? 0
    const most = Math.min(this.left[s] ?? 0, Math.floor(room / this.size(s)))
    // The smallest size only closes the pattern: fewer than the most would not be full.
    const least = rank === this.bySize.length - 1 ? most : 0
    for (let units = most; units >= least; units--) {
      this.put(s, lot, units)
      if (this.pattern(depth, rank + 1, room - units * this.size(s), slack)) return true
      this.put(s, lot, -units)
      if (this.nodes > this.nodeBudget) return false
    }
    return false
  }

  /** Room that the sizes from `rank` on could fill at most. */
  private fillable(rank: number): number {
    let sum = 0
    for (let r = rank; r < this.bySize.length; r++) {
      const s = this.bySize[r] ?? 0
      sum += (this.left[s] ?? 0) * this.size(s)
    }
    return sum
  }

  private mayWaste(depth: number, slack: number): number {
    return this.isEven ? slack / (this.lots.length - depth) : slack
  }

  private isFull(room: number): boolean {
    return this.bySize.every((s) => this.left[s] === 0 || this.size(s) > room)
  }

  private put(s: number, lot: number, units: number): void {
    this.left[s] = (this.left[s] ?? 0) - units
    const row = this.placed[s]
    if (row) row[lot] = (row[lot] ?? 0) + units
  }

  private room(lot: number): number {
    return this.question.capacity[lot] ?? 0
  }

  private size(s: number): number {
    return this.question.sizes[s] ?? 0
  }

  private count(s: number): number {
    return this.question.counts[s] ?? 0
  }
}
