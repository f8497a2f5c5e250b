import type { Spread } from '../units/spread.ts'
import { type Pace, referencePace } from './labour-pace.ts'
import { referenceThreadUse } from './learn-thread-use.ts'

/**
 * What a workshop has learnt of itself: its pace in seconds, the share of beads it puts aside by form,
 * and its thread over what the route reckons. The tables' own figures where nothing is known.
 */
export type Learned = Readonly<{
  pace: Pace
  /** By form id, a share of 1; forms without counts are not in it. */
  cullRates: Readonly<Record<string, Spread>>
  threadUse: Spread
}>

/** Before any session: the reference tables' own figures. */
export const nothingLearned: Learned = {
  pace: referencePace,
  cullRates: {},
  threadUse: referenceThreadUse,
}
