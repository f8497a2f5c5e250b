/** An estimate drawn towards what was believed before: `weight` (Z) is the trust in the workshop's own figures. */
export type CredibleEstimate = Readonly<{ estimate: number; weight: number }>

/**
 * A mean of `count` figures drawn towards a prior worth `priorWeight` of them.
 *
 * Z = n / (n + k), estimate = Z mean + (1 - Z) prior; the prior itself without figures.
 *
 * @source H. Buhlmann, Experience Rating and Credibility, 1967.
 * @example credibleMean({ mean: 42, count: 1, prior: 30, priorWeight: 4 }) // estimate 32.4
 */
export function credibleMean(
  of: Readonly<{ mean: number; count: number; prior: number; priorWeight: number }>,
): CredibleEstimate {
  const { mean, count, prior, priorWeight } = of
  if (count <= 0) return { estimate: prior, weight: 0 }
  const weight = count / (count + priorWeight)
  return { estimate: weight * mean + (1 - weight) * prior, weight }
}

/** What groups of figures say together: variances, the weight k of the collective, and each group's estimate. */
export type Collective = Readonly<{
  within: number
  between: number
  k: number
  collective: number
  estimates: readonly CredibleEstimate[]
}>

/**
 * Estimates for several groups that lend each other strength.
 *
 * Variances within and between groups without assuming a distribution, each figure of weight 1; the
 * collective mean is weighted by trust. Groups that differ by no more than chance are all drawn to
 * the common mean (between variance 0, k infinite).
 *
 * @param groups - Figures by group; groups without figures are not allowed.
 * @returns `undefined` unless there are two groups or more and some group has two figures.
 * @source Buhlmann-Straub; Klugman, Panjer, Willmot, Loss Models, nonparametric empirical Bayes.
 */
export function collectiveEstimates(
  groups: readonly (readonly number[])[],
): Collective | undefined {
  const sizes = groups.map((group) => group.length)
  const total = sizes.reduce((sum, size) => sum + size, 0)
  if (groups.length < 2 || total <= groups.length || sizes.includes(0)) return undefined
  const means = groups.map(meanOf)
  const grand = meanOf(groups.flat())
  const within =
    sumOf(groups.map((group, at) => squares(group, means[at] ?? 0))) / (total - groups.length)
  const apart = sumOf(means.map((mean, at) => (sizes[at] ?? 0) * (mean - grand) ** 2))
  const spare = total - sumOf(sizes.map((size) => size ** 2)) / total
  const between = Math.max(0, (apart - within * (groups.length - 1)) / spare)
  const k = between > 0 ? within / between : Number.POSITIVE_INFINITY
  const weights = sizes.map((size) => size / (size + k))
  const trust = sumOf(weights)
  const collective =
    trust > 0 ? sumOf(weights.map((weight, at) => weight * (means[at] ?? 0))) / trust : grand
  const estimates = weights.map((weight, at) => ({
    weight,
    estimate: weight * (means[at] ?? 0) + (1 - weight) * collective,
  }))
  return { within, between, k, collective, estimates }
}

function meanOf(values: readonly number[]): number {
  return sumOf(values) / values.length
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0)
}

function squares(values: readonly number[], mean: number): number {
  return sumOf(values.map((value) => (value - mean) ** 2))
}
