import { crostonSteps, sbaSteps } from './croston.ts'
import { tsbSteps } from './tsb.ts'

/** A way to forecast demand that comes now and then. */
export type ForecastMethod = 'croston' | 'sba' | 'tsb'

/** The demand to expect per period, how it was forecast, and how well that would have done so far. */
export type DemandForecast = Readonly<{
  perPeriod: number
  /** `none` for a history without demand. */
  method: ForecastMethod | 'none'
  alpha: number
  /** Root of the mean squared error over the horizon, in the material's unit; null when the history is too short to tell. */
  errorOverHorizon: number | null
  /** Past forecasts it was judged by. */
  judgedBy: number
}>

/** Smoothing tried, the usual range; the calmest first, which wins ties. */
const ALPHAS = [0.05, 0.1, 0.2, 0.3] as const
const METHODS = ['sba', 'tsb', 'croston'] as const

/** Fewer past forecasts than this cannot choose between methods. */
const FEWEST_JUDGED = 4

/**
 * The forecast that would have predicted this history best.
 *
 * Each method and smoothing is run through the history. After every period from the first demand on, its
 * forecast times the horizon is held against what was then used over that many periods, and the
 * least mean squared error wins. Every forecast knows only what came before it. A history too short to
 * choose by gets SBA with 0.1.
 *
 * @param demand per period, oldest first, 0 or more in the material's unit
 * @param horizon whole periods to look ahead, above 0: the lead time
 */
export function forecastDemand(demand: readonly number[], horizon: number): DemandForecast {
  if (!demand.some((quantity) => quantity > 0)) {
    return { perPeriod: 0, method: 'none', alpha: 0, errorOverHorizon: null, judgedBy: 0 }
  }
  const tried = METHODS.flatMap((method) =>
    ALPHAS.map((alpha) => judge(demand, horizon, method, alpha)),
  )
  const usual = judge(demand, horizon, 'sba', 0.1)
  if (usual.judgedBy < FEWEST_JUDGED) return { ...usual, errorOverHorizon: null }
  return tried.reduce((best, next) =>
    (next.errorOverHorizon ?? 0) < (best.errorOverHorizon ?? 0) ? next : best,
  )
}

/** The forecast per period after each period of the history; null before the first demand. */
export function forecastsOf(
  demand: readonly number[],
  method: ForecastMethod,
  alpha: number,
): readonly (number | null)[] {
  if (method === 'tsb') return tsbForecasts(demand, alpha)
  const steps = method === 'sba' ? sbaSteps(demand, alpha) : crostonSteps(demand, alpha)
  return steps.map((step) => step?.forecast ?? null)
}

/** Starts at the first demand, with its size and one chance in its period number, so that nothing later is known. */
function tsbForecasts(demand: readonly number[], alpha: number): readonly (number | null)[] {
  const first = demand.findIndex((quantity) => quantity > 0)
  if (first < 0) return demand.map(() => null)
  const start = { alpha, beta: alpha, size: demand[first] ?? 0, probability: 1 / (first + 1) }
  const steps = tsbSteps(demand.slice(first), start)
  return [...demand.slice(0, first).map(() => null), ...steps.map((step) => step.forecast)]
}

function judge(
  demand: readonly number[],
  horizon: number,
  method: ForecastMethod,
  alpha: number,
): DemandForecast {
  const forecasts = forecastsOf(demand, method, alpha)
  let squares = 0
  let judgedBy = 0
  for (let period = 0; period + horizon < demand.length; period++) {
    const forecast = forecasts[period]
    if (forecast === null || forecast === undefined) continue
    const used = demand.slice(period + 1, period + 1 + horizon).reduce((sum, q) => sum + q, 0)
    squares += (forecast * horizon - used) ** 2
    judgedBy++
  }
  const errorOverHorizon = judgedBy > 0 ? Math.sqrt(squares / judgedBy) : null
  return { perPeriod: forecasts.at(-1) ?? 0, method, alpha, errorOverHorizon, judgedBy }
}
