import { deltaE2000 } from '../ciede2000.ts'
import { binMeans, gatherBins } from './colour-bins.ts'
import { labOfEven } from './even-space.ts'

/** Beads looked at for each group of like colours: the nearest in the even space. */
const NEAREST = 12
/** Steps a side of the grid of groups: about a thousand groups for a picture full of colours. */
const STEPS = 16

/** Groups costed between two reports of progress. */
const GROUPS_A_STEP = 64
/** Shares of the work done when all costs are known, and when the first choice is made: about half each. */
const COSTED = 0.4
const TAKEN = 0.6

/**
 * Chooses at most `most` of the beads at hand so that a picture's colours lose least.
 *
 * Bead by bead, the one that lowers the sum of CIEDE2000 over the picture most is taken next; a gain
 * can only shrink as beads are added, so gains found before serve as bounds. Then each chosen bead is
 * exchanged for any better one until nothing improves (at most `SWAP_ROUNDS` times over).
 *
 * @param even - The picture's colours, three numbers each, from `writeEven`; at least one.
 * @param labs - L, a, b of each bead; at least one. @param evens - Their places in the even space.
 * @param most - Beads to choose, 1 or more.
 * @returns a generator that yields the share done, 0 to 1, and returns the indexes of the chosen
 *   beads in rising order; stop asking and the choosing is cancelled.
 */
export function* chooseBeads(
  even: Float64Array,
  labs: Float64Array,
  evens: Float64Array,
  most: number,
): Generator<number, readonly number[]> {
  const { means, weights } = binMeans(gatherBins(even, STEPS))
  const worthy = nearBeads(means, evens)
  if (worthy.length <= most) return worthy
  const costs = new Float64Array(worthy.length * weights.length)
  for (let group = 0; group < weights.length; group++) {
    if (group % GROUPS_A_STEP === 0) yield (COSTED * group) / weights.length
    writeCosts(costs, group, { means, weights, labs, worthy })
  }
  const chosen = yield* takeGreedily(costs, weights.length, worthy.length, most)
  yield* exchange(costs, weights.length, worthy.length, chosen)
  return chosen.map((bead) => worthy[bead] as number).toSorted((x, y) => x - y)
}

/** Beads that are among the nearest to some group of colours, in rising order. */
function nearBeads(means: Float64Array, evens: Float64Array): readonly number[] {
  const beads = evens.length / 3
  if (beads <= NEAREST) return Array.from({ length: beads }, (_, i) => i)
  const near = new Set<number>()
  const nearest = new Int32Array(NEAREST)
  const squares = new Float64Array(NEAREST)
  for (let at = 0; at < means.length; at += 3) {
    squares.fill(Number.POSITIVE_INFINITY)
    for (let bead = 0; bead < beads; bead++) {
      const dx = (means[at] as number) - (evens[3 * bead] as number)
      const dy = (means[at + 1] as number) - (evens[3 * bead + 1] as number)
      const dz = (means[at + 2] as number) - (evens[3 * bead + 2] as number)
      insertNearest(squares, nearest, dx * dx + dy * dy + dz * dz, bead)
    }
    for (const bead of nearest) near.add(bead)
  }
  return [...near].toSorted((x, y) => x - y)
}

/** Keeps the least squares in rising order, with the beads they belong to. */
function insertNearest(squares: Float64Array, nearest: Int32Array, square: number, bead: number) {
  let place = NEAREST - 1
  if (square >= (squares[place] as number)) return
  while (place > 0 && square < (squares[place - 1] as number)) {
    squares[place] = squares[place - 1] as number
    nearest[place] = nearest[place - 1] as number
    place -= 1
  }
  squares[place] = square
  nearest[place] = bead
}

type Table = Readonly<{
  means: Float64Array
  weights: Float64Array
  labs: Float64Array
  worthy: readonly number[]
}>

/** Writes the weighted CIEDE2000 of one group by every bead: [bead][group], a row a bead. */
function writeCosts(
  costs: Float64Array,
  group: number,
  { means, weights, labs, worthy }: Table,
): void {
  const { l, a, b } = labOfEven(
    means[3 * group] as number,
    means[3 * group + 1] as number,
    means[3 * group + 2] as number,
  )
  for (const [row, bead] of worthy.entries()) {
    const difference = deltaE2000(
      l,
      a,
      b,
      labs[3 * bead] as number,
      labs[3 * bead + 1] as number,
      labs[3 * bead + 2] as number,
    )
    costs[row * weights.length + group] = difference * (weights[group] as number)
  }
}

function* takeGreedily(
  costs: Float64Array,
  groups: number,
  beads: number,
  most: number,
): Generator<number, number[]> {
  const now = new Float64Array(groups).fill(Number.POSITIVE_INFINITY)
  const bounds = new Float64Array(beads).fill(Number.POSITIVE_INFINITY)
  const chosen: number[] = []
  while (chosen.length < most) {
    yield COSTED + ((TAKEN - COSTED) * chosen.length) / most
    const bead = bestGain(costs, now, bounds, chosen.length === 0)
    chosen.push(bead)
    bounds[bead] = Number.NEGATIVE_INFINITY
    for (let group = 0; group < groups; group++) {
      now[group] = Math.min(now[group] as number, costs[bead * groups + group] as number)
    }
  }
  return chosen
}

/** The bead with the greatest gain; the first one is the bead that costs least alone. */
function bestGain(
  costs: Float64Array,
  now: Float64Array,
  bounds: Float64Array,
  first: boolean,
): number {
  const fresh = new Set<number>()
  for (;;) {
    let top = 0
    for (let bead = 1; bead < bounds.length; bead++) {
      if ((bounds[bead] as number) > (bounds[top] as number)) top = bead
    }
    if (fresh.has(top)) {
      // Gains of the first round count from nothing and bound no later ones.
      if (first) bounds.fill(Number.POSITIVE_INFINITY)
      return top
    }
    bounds[top] = first ? -alone(costs, now.length, top) : gainOf(costs, now, top)
    fresh.add(top)
  }
}

function alone(costs: Float64Array, groups: number, bead: number): number {
  let sum = 0
  for (let group = 0; group < groups; group++) sum += costs[bead * groups + group] as number
  return sum
}

function gainOf(costs: Float64Array, now: Float64Array, bead: number): number {
  const row = bead * now.length
  let gain = 0
  for (let group = 0; group < now.length; group++) {
    const saved = (now[group] as number) - (costs[row + group] as number)
    if (saved > 0) gain += saved
  }
  return gain
}

/** Rounds of exchanges: each looks at every chosen bead once. */
const SWAP_ROUNDS = 3

/** Exchanges chosen beads for others, in place, wherever the whole picture gains. */
function* exchange(
  costs: Float64Array,
  groups: number,
  beads: number,
  chosen: number[],
): Generator<number, void> {
  const others = new Float64Array(groups)
  for (let round = 0; round < SWAP_ROUNDS; round++) {
    let improved = false
    for (const [place, bead] of chosen.entries()) {
      yield TAKEN + ((1 - TAKEN) * (round + place / chosen.length)) / SWAP_ROUNDS
      others.fill(Number.POSITIVE_INFINITY)
      for (const other of chosen) {
        if (other !== bead) lower(others, costs, other)
      }
      const better = bestBeside(others, costs, beads, bead, chosen)
      if (better === bead) continue
      chosen[place] = better
      improved = true
    }
    if (!improved) return
  }
}

function lower(least: Float64Array, costs: Float64Array, bead: number): void {
  const row = bead * least.length
  for (let group = 0; group < least.length; group++) {
    least[group] = Math.min(least[group] as number, costs[row + group] as number)
  }
}

/** The bead that, beside the others, leaves the least cost; `bead` itself unless another is better. */
function bestBeside(
  others: Float64Array,
  costs: Float64Array,
  beads: number,
  bead: number,
  chosen: readonly number[],
): number {
  const taken = new Set(chosen)
  let best = bead
  let least = costBeside(others, costs, bead)
  for (let candidate = 0; candidate < beads; candidate++) {
    if (taken.has(candidate)) continue
    const cost = costBeside(others, costs, candidate)
    if (cost < least - 1e-9) {
      least = cost
      best = candidate
    }
  }
  return best
}

function costBeside(others: Float64Array, costs: Float64Array, bead: number): number {
  const row = bead * others.length
  let sum = 0
  for (let group = 0; group < others.length; group++) {
    sum += Math.min(others[group] as number, costs[row + group] as number)
  }
  return sum
}
