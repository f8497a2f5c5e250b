import { measured, type Spread } from '../units/spread.ts'
import { credibleMean } from './labour-credibility.ts'
import { huberLocation, madScale } from './labour-robust.ts'

/** How many sessions a reference figure is worth. Chosen by us: it is known to about 40 %, a session to about 20 %. */
export const PRIOR_SESSIONS = 4

/** The least spread between sessions reckoned with, as a share: hands are never steadier than this. */
export const LEAST_SPREAD = 0.05

/** Standard deviations to either side of the expected figure: four sessions in five fall within. */
const REACH = 1.28

/**
 * A figure of the reference tables moved to where this workshop's sessions put it.
 *
 * `ratios` are logarithms of what each session came to over what was reckoned; they are centred
 * robustly, then drawn towards `common` (a logarithm too, 0 for the reference): Z = n / (n + 4). The
 * range narrows from the reference's to that of the sessions; basis `measured`. The figure as it was
 * without sessions.
 *
 * @param prior above 0
 */
export function learnRatio(prior: Spread, ratios: readonly number[], common: number): Spread {
  const count = ratios.length
  if (count === 0) return prior
  const { estimate, weight } = credibleMean({
    mean: huberLocation(ratios),
    count,
    prior: common,
    priorWeight: PRIOR_SESSIONS,
  })
  const own = REACH * Math.max(LEAST_SPREAD, madScale(ratios)) * Math.sqrt(1 + 1 / count)
  const below = (1 - weight) * Math.log(prior.value / prior.low) + weight * own
  const above = (1 - weight) * Math.log(prior.high / prior.value) + weight * own
  const value = prior.value * Math.exp(estimate)
  return measured(value * Math.exp(-below), value, value * Math.exp(above))
}
