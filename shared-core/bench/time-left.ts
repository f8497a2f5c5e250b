import type { Basis } from '../units/spread.ts'
import type { ReaderMap } from './reader-place.ts'

/** Time left at the bench, s, and what it rests on. */
export type TimeLeft = Readonly<{ leftS: number; basis: Basis }>

/** Work by the script's pace that this make's own time must outweigh before it is trusted, s; chosen by us. */
const TRUSTED_S = 600

/** A make is not taken to be more than so many times slower or faster than the script's pace; chosen by us. */
const MOST_TIMES = 4

/** What is known of the pace: time counted, and what the work done in it takes by the script's pace, s. */
export type PaceSeen = Readonly<{ workedS: number; madeS: number }>

/**
 * The time left from a step on, by this make's own pace as far as it is known.
 *
 * The pace the script was written with counts as ten minutes of evidence; what was seen as the rest.
 * `measured` once as much as that has been made, else as well known as the pace.
 */
export function timeLeft(map: ReaderMap, at: number, { workedS, madeS }: PaceSeen): TimeLeft {
  const pace = (workedS + TRUSTED_S) / (madeS + TRUSTED_S)
  const kept = Math.min(MOST_TIMES, Math.max(1 / MOST_TIMES, pace))
  const leftS = Math.round((estimateUpTo(map, map.steps) - estimateUpTo(map, at)) * kept)
  return { leftS, basis: madeS >= TRUSTED_S ? 'measured' : map.paceBasis }
}

/**
 * The pace seen when work is taken up again: all before the step in the time kept. Nothing where the
 * two cannot belong together, as after a jump.
 */
export function paceAtStart(map: ReaderMap, at: number, workedS: number): PaceSeen {
  const madeS = estimateUpTo(map, at)
  const isLikely = workedS <= madeS * MOST_TIMES && workedS * MOST_TIMES >= madeS
  return isLikely ? { workedS, madeS } : { workedS: 0, madeS: 0 }
}

/** What all before a step takes by the script's pace, s; a line half done counts by its steps. */
export function estimateUpTo({ lines, stepsInUnit, units }: ReaderMap, at: number): number {
  if (stepsInUnit === 0) return 0
  const unit = Math.min(units, Math.floor(at / stepsInUnit))
  const inUnit = at - unit * stepsInUnit
  return lines.reduce((sum, { line, from, to }) => {
    const share = Math.min(1, Math.max(0, (inUnit - from) / Math.max(1, to - from)))
    return sum + line.estimateS * (unit + share)
  }, 0)
}
