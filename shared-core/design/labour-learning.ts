import type { SlackKind } from '../route/thread-slack.ts'
import type { Spread } from '../units/spread.ts'
import { collectiveEstimates, credibleMean } from './labour-credibility.ts'
import type { Pace } from './labour-pace.ts'
import { huberLocation, madScale } from './labour-robust.ts'
import { LEAST_SPREAD, learnRatio, PRIOR_SESSIONS } from './learn-ratio.ts'

/** What a logged session was spent on: a stitch or strand, or a unit's set-up or finishing. */
export type SessionWork = SlackKind | 'set-up' | 'finishing'

/** One logged session: whole seconds on one kind of work, and how much was done in them. */
export type LoggedSession = Readonly<{
  work: SessionWork
  /** Beads stitched and rows begun; 0 for set-up and finishing. */
  beads: number
  rows: number
  /** Units set up or finished; 0 for stitching. */
  units: number
  seconds: number
}>

/**
 * The workshop's own pace from its logged sessions.
 *
 * Each session is compared with the prior pace as a ratio, in logarithms. The ratios of one kind of
 * work are centred robustly, so that the day the phone rang counts little; then they are drawn
 * towards the workshop's pace in its other work, and that towards the prior: Z = n / (n + 4). Figures
 * that sessions stand behind are `measured`; their range narrows as sessions agree.
 *
 * Sessions without time or work are left out.
 */
export function learnPace(sessions: readonly LoggedSession[], prior: Pace): Pace {
  const ratios = ratiosByWork(sessions, prior)
  const common = commonRatio(ratios)
  const learnt = (work: SessionWork, from: Spread) => {
    const own = ratios.get(work)
    return own === undefined ? from : learnRatio(from, own, common)
  }
  const perBeadS = Object.fromEntries(
    Object.entries(prior.perBeadS).map(([kind, pace]) => [kind, learnt(kind as SlackKind, pace)]),
  ) as Record<SlackKind, Spread>
  return {
    setUpS: learnt('set-up', prior.setUpS),
    perBeadS,
    perRowS: prior.perRowS,
    finishingS: learnt('finishing', prior.finishingS),
  }
}

/** Logarithms of actual over expected seconds, by kind of work. */
function ratiosByWork(
  sessions: readonly LoggedSession[],
  prior: Pace,
): ReadonlyMap<SessionWork, readonly number[]> {
  const ratios = new Map<SessionWork, number[]>()
  for (const session of sessions) {
    const ratio = workRatio(session, prior)
    if (ratio === undefined) continue
    const known = ratios.get(session.work)
    if (known === undefined) ratios.set(session.work, [ratio])
    else known.push(ratio)
  }
  return ratios
}

/** Rows are reckoned at the prior's pace, so that what is learnt falls on the beads. */
function workRatio({ work, beads, rows, units, seconds }: LoggedSession, prior: Pace) {
  if (!(seconds > 0)) return undefined
  if (work === 'set-up' || work === 'finishing') {
    const each = work === 'set-up' ? prior.setUpS.value : prior.finishingS.value
    return units > 0 && each > 0 ? Math.log(seconds / (units * each)) : undefined
  }
  const onBeads = beads * prior.perBeadS[work].value
  const onRows = rows * prior.perRowS.value
  if (!(onBeads > 0)) return undefined
  const share = Math.max(0.1, (seconds - onRows) / onBeads)
  return Math.log(share)
}

/** The workshop's pace over all its work, drawn towards the prior (0 in logarithms). */
function commonRatio(ratios: ReadonlyMap<SessionWork, readonly number[]>): number {
  const groups = [...ratios.values()]
  const centres = groups.map((group) => huberLocation(group))
  const collective = collectiveEstimates(groups.map((group, at) => heldTo(group, centres[at] ?? 0)))
  const all = groups.flat()
  if (all.length === 0) return 0
  const mean = collective?.collective ?? huberLocation(all)
  return credibleMean({ mean, count: all.length, prior: 0, priorWeight: PRIOR_SESSIONS }).estimate
}

/** Ratios with the wild ones brought in to twice the robust spread. */
function heldTo(group: readonly number[], centre: number): readonly number[] {
  const reach = 2 * Math.max(LEAST_SPREAD, madScale(group))
  return group.map((ratio) => Math.min(centre + reach, Math.max(centre - reach, ratio)))
}
