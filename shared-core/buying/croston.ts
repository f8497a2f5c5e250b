/** After one period: smoothed size and interval of demands, and the forecast per period; null before the first demand. */
export type CrostonStep = Readonly<{ size: number; interval: number; forecast: number }> | null

/**
 * Croston's forecast of demand that comes now and then, after each period.
 *
 * Size and interval are smoothed only when there is demand; the forecast per period is size / interval.
 * Starts with the first demand and its period number.
 *
 * @param demand per period, oldest first, 0 or more
 * @param alpha smoothing of both, above 0 and up to 1
 * @source J. D. Croston, Operational Research Quarterly 23 (1972), 289
 * @example 0 0 4 0 0 0 5, alpha 0.1 -> 4.1 / 3.1 = 1.3226
 */
export function crostonSteps(demand: readonly number[], alpha: number): readonly CrostonStep[] {
  let step: CrostonStep = null
  let since = 0
  return demand.map((quantity) => {
    since++
    if (quantity > 0) {
      const size: number = step ? step.size + alpha * (quantity - step.size) : quantity
      const interval: number = step ? step.interval + alpha * (since - step.interval) : since
      step = { size, interval, forecast: size / interval }
      since = 0
    }
    return step
  })
}

/**
 * Croston's forecast after each period, freed of most of its upward bias: x (1 - alpha / 2).
 *
 * @source A. A. Syntetos, J. E. Boylan, International Journal of Forecasting 21 (2005), 303
 */
export function sbaSteps(demand: readonly number[], alpha: number): readonly CrostonStep[] {
  return crostonSteps(demand, alpha).map(
    (step) => step && { ...step, forecast: step.forecast * (1 - alpha / 2) },
  )
}
