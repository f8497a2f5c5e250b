/** The middle of some figures, the mean of the two middle ones where they are even. @throws RangeError for none. */
export function median(values: readonly number[]): number {
  if (values.length === 0) throw new RangeError('median: expected at least one figure')
  const sorted = [...values].sort((a, b) => a - b)
  const middle = sorted.length >> 1
  const upper = sorted[middle] ?? 0
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? 0) + upper) / 2
}

/** Median absolute deviation over its normal value 0.6745: a standard deviation that wild figures do not move. */
const MAD_OF_NORMAL = 0.6744897501960817

/** Huber's constant: 95 % as efficient as the mean when nothing is wild. */
export const HUBER_K = 1.345

const MAX_STEPS = 200

/** Robust spread of some figures: their median absolute deviation over 0.6745. */
export function madScale(values: readonly number[]): number {
  const middle = median(values)
  return median(values.map((value) => Math.abs(value - middle))) / MAD_OF_NORMAL
}

/**
 * The centre of some figures, with wild ones held at `k` robust deviations from it.
 *
 * Iteratively reweighted mean from the median, scale fixed at `madScale`; the median itself where all
 * but a few figures agree exactly.
 *
 * @source P. J. Huber, Robust Estimation of a Location Parameter, 1964; k = 1.345.
 */
export function huberLocation(values: readonly number[], k: number = HUBER_K): number {
  const scale = madScale(values)
  let centre = median(values)
  if (scale === 0) return centre
  for (let step = 0; step < MAX_STEPS; step += 1) {
    let weights = 0
    let sum = 0
    for (const value of values) {
      const off = Math.abs(value - centre) / scale
      const weight = off <= k ? 1 : k / off
      weights += weight
      sum += weight * value
    }
    const next = sum / weights
    if (Math.abs(next - centre) <= 1e-12 * Math.max(1, Math.abs(next))) return next
    centre = next
  }
  return centre
}

/** A straight line by its slope and its height at 0. */
export type Line = Readonly<{ slope: number; intercept: number }>

/** Points a line is laid through, at most; beyond it the latest count. */
const MAX_POINTS = 400

/**
 * The line most pairs of points agree on: the median of all slopes, through the medians.
 *
 * One wild point in four does not move it. Used to tell a session's set-up (height at 0) from the
 * time each unit takes (slope).
 *
 * @returns `undefined` where fewer than two points differ in x.
 * @source H. Theil 1950, P. K. Sen 1968; intercept median(y) - slope median(x).
 */
export function theilSen(points: readonly Readonly<{ x: number; y: number }>[]): Line | undefined {
  const latest = points.slice(-MAX_POINTS)
  const slopes = latest.flatMap((a, at) =>
    latest
      .slice(at + 1)
      .filter((b) => b.x !== a.x)
      .map((b) => (b.y - a.y) / (b.x - a.x)),
  )
  if (slopes.length === 0) return undefined
  const slope = median(slopes)
  const intercept = median(latest.map(({ y }) => y)) - slope * median(latest.map(({ x }) => x))
  return { slope, intercept }
}
