/** Rounds after which the means have settled for the eye. */
const ROUNDS = 10

/**
 * Moves means to the middle of the points nearest to them, round by round (k-means), in place.
 *
 * @param points - Three numbers a point. @param weights - One a point. @param means - Three a mean.
 * @returns the mean nearest to each point after the last round.
 * @source S. Lloyd, Least squares quantization in PCM, IEEE Transactions on Information Theory 28 (1982).
 */
export function refineMeans(
  points: Float64Array,
  weights: Float64Array,
  means: Float64Array,
): Int32Array {
  const nearest = new Int32Array(weights.length).fill(-1)
  for (let round = 0; round < ROUNDS; round++) {
    if (!assignNearest(points, means, nearest)) break
    moveMeans(points, weights, nearest, means)
  }
  assignNearest(points, means, nearest)
  return nearest
}

/** Finds the mean nearest to each point; tells whether any point changed its mean. */
function assignNearest(points: Float64Array, means: Float64Array, nearest: Int32Array): boolean {
  let changed = false
  for (let i = 0; i < nearest.length; i++) {
    const found = nearestMean(points, 3 * i, means)
    if (nearest[i] !== found) {
      nearest[i] = found
      changed = true
    }
  }
  return changed
}

function nearestMean(points: Float64Array, at: number, means: Float64Array): number {
  const x = points[at] as number
  const y = points[at + 1] as number
  const z = points[at + 2] as number
  let best = 0
  let least = Number.POSITIVE_INFINITY
  for (let j = 0; j < means.length; j += 3) {
    const dx = x - (means[j] as number)
    const dy = y - (means[j + 1] as number)
    const dz = z - (means[j + 2] as number)
    const distance = dx * dx + dy * dy + dz * dz
    if (distance < least) {
      least = distance
      best = j
    }
  }
  return best / 3
}

/** Puts each mean in the middle of its points; one without points stays where it is. */
function moveMeans(
  points: Float64Array,
  weights: Float64Array,
  nearest: Int32Array,
  means: Float64Array,
): void {
  const sums = new Float64Array(means.length)
  const totals = new Float64Array(means.length / 3)
  for (let i = 0; i < weights.length; i++) {
    const mean = nearest[i] as number
    const weight = weights[i] as number
    totals[mean] = (totals[mean] as number) + weight
    for (let axis = 0; axis < 3; axis++) {
      const at = 3 * mean + axis
      sums[at] = (sums[at] as number) + weight * (points[3 * i + axis] as number)
    }
  }
  for (const [mean, total] of totals.entries()) {
    if (total === 0) continue
    for (let axis = 0; axis < 3; axis++)
      means[3 * mean + axis] = (sums[3 * mean + axis] as number) / total
  }
}
