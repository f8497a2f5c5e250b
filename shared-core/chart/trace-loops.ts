import type { Stripes } from './stripes.ts'

/**
 * The closed lines round a stack of stripes, as corners `[x, level, x, level ...]`, clockwise round
 * what is covered (y down), so that holes run the other way.
 *
 * One sweep from the top: between two stripes an edge lies wherever just one of them covers. A corner
 * is made only where the line turns; where two covered parts touch at a corner the lines keep apart.
 */
export function traceLoops(stripes: Stripes): readonly Int32Array[] {
  const corners = new Corners()
  let above: Stripe = { edges: [], length: 0, ends: [] }
  let below: Stripe = { edges: [], length: 0, ends: [] }
  for (let level = 0; level <= stripes.count; level += 1) {
    below.length = level < stripes.count ? stripes.read(level, below.edges) : 0
    if (sameIntervals(above, below)) {
      below.ends = above.ends.slice(0, above.length)
    } else {
      sweepLevel(corners, above, below, level)
    }
    const spent = above
    above = below
    below = spent
  }
  return corners.loops()
}

/** A stripe's interval edges and, beside each, the corner its upright line starts from or runs to. */
type Stripe = { edges: number[]; length: number; ends: number[] }

function sameIntervals(a: Stripe, b: Stripe): boolean {
  if (a.length !== b.length) return false
  for (let i = 0; i < a.length; i += 1) if (a.edges[i] !== b.edges[i]) return false
  return true
}

function sweepLevel(corners: Corners, above: Stripe, below: Stripe, level: number): void {
  let [i, j, pending] = [0, 0, -1]
  while (i < above.length || j < below.length) {
    const upper = i < above.length ? (above.edges[i] ?? Infinity) : Infinity
    const lower = j < below.length ? (below.edges[j] ?? Infinity) : Infinity
    const x = Math.min(upper, lower)
    const state = {
      isCoveredAbove: i % 2 === 1,
      isCoveredBelow: j % 2 === 1,
      crossesAbove: upper === x,
      crossesBelow: lower === x,
    }
    const meeting = { corners, state, x, level, pending, end: above.ends[i] ?? -1 }
    const met = meet(meeting)
    pending = met.pending
    if (state.crossesBelow) below.ends[j] = met.end
    if (state.crossesAbove) i += 1
    if (state.crossesBelow) j += 1
  }
}

type Meeting = Readonly<{
  corners: Corners
  state: Readonly<{
    isCoveredAbove: boolean
    isCoveredBelow: boolean
    crossesAbove: boolean
    crossesBelow: boolean
  }>
  x: number
  level: number
  /** The corner the level line from the left comes from or runs to, -1 where there is none. */
  pending: number
  /** The corner of the upright line above. */
  end: number
}>

function meet(meeting: Meeting): Readonly<{ pending: number; end: number }> {
  const { corners, state, x, level, pending, end } = meeting
  const { isCoveredAbove, isCoveredBelow, crossesAbove, crossesBelow } = state
  if (crossesAbove && crossesBelow) {
    // An upright line that goes straight on needs no corner.
    if (isCoveredAbove === isCoveredBelow) return { pending, end }
    return meetAtCorner(meeting)
  }
  const corner = corners.add(x, level)
  if (pending >= 0) joinLevel(corners, { isCoveredAbove, left: pending, right: corner })
  if (crossesAbove) joinUpright(corners, { isRightEdge: isCoveredAbove, top: end, bottom: corner })
  return { pending: pending >= 0 ? -1 : corner, end: corner }
}

/** Two covered parts touch at one corner: each gets a corner of its own. */
function meetAtCorner({ corners, state, x, level, pending, end }: Meeting) {
  const first = corners.add(x, level)
  const second = corners.add(x, level)
  joinLevel(corners, { isCoveredAbove: state.isCoveredAbove, left: pending, right: first })
  if (state.isCoveredAbove) {
    joinUpright(corners, { isRightEdge: true, top: end, bottom: first })
    return { pending: second, end: second }
  }
  joinUpright(corners, { isRightEdge: false, top: end, bottom: second })
  return { pending: second, end: first }
}

/** A part above ends here, its lower edge running left; or a part below begins, its upper edge running right. */
function joinLevel(
  corners: Corners,
  edge: Readonly<{ isCoveredAbove: boolean; left: number; right: number }>,
): void {
  if (edge.isCoveredAbove) corners.join(edge.right, edge.left)
  else corners.join(edge.left, edge.right)
}

/** Right edges run down, left edges up. */
function joinUpright(
  corners: Corners,
  edge: Readonly<{ isRightEdge: boolean; top: number; bottom: number }>,
): void {
  if (edge.isRightEdge) corners.join(edge.top, edge.bottom)
  else corners.join(edge.bottom, edge.top)
}

/** Corners in the order they are met, each knowing the one the line runs to next. */
class Corners {
  readonly #xs: number[] = []
  readonly #levels: number[] = []
  readonly #next: number[] = []

  add(x: number, level: number): number {
    this.#xs.push(x)
    this.#levels.push(level)
    return this.#next.push(-1) - 1
  }

  join(from: number, to: number): void {
    this.#next[from] = to
  }

  loops(): readonly Int32Array[] {
    const isDone = new Uint8Array(this.#next.length)
    const loops: Int32Array[] = []
    for (let start = 0; start < isDone.length; start += 1) {
      if (isDone[start] === 0) loops.push(this.#loopFrom(start, isDone))
    }
    return loops
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
