/** After one period: smoothed size of demands, probability of demand in a period, and the forecast per period. */
export type TsbStep = Readonly<{ size: number; probability: number; forecast: number }>

/** Smoothing of size and probability, above 0 and up to 1, and where they start. */
export type TsbSettings = Readonly<{
  alpha: number
  beta: number
  size: number
  probability: number
}>

/**
 * The forecast of Teunter, Syntetos and Babai after each period.
 *
 * The probability of demand is smoothed every period, the size only when there is demand; the forecast
 * is their product, so it fades when a material is no longer used. The start stands for the first period.
 *
 * @param demand per period, oldest first, 0 or more
 * @source R. H. Teunter, A. A. Syntetos, M. Z. Babai, European Journal of Operational Research 214 (2011), 606
 * @example 0 0 4, start 4 and 0.25, alpha and beta 0.1 -> 4 x 0.3025 = 1.21
 */
export function tsbSteps(
  demand: readonly number[],
  { alpha, beta, size, probability }: TsbSettings,
): readonly TsbStep[] {
  let step: TsbStep = { size, probability, forecast: size * probability }
  return demand.map((quantity, period) => {
    if (period === 0) return step
    const isDemand = quantity > 0
    const next = isDemand ? step.size + alpha * (quantity - step.size) : step.size
    const chance = step.probability + beta * ((isDemand ? 1 : 0) - step.probability)
    step = { size: next, probability: chance, forecast: next * chance }
    return step
  })
}
