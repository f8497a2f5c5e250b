import type { ThreadConstruction } from '../beads/thread.ts'
import type { StitchKind } from '../chart/chart.ts'
import { estimated, type Spread } from '../units/spread.ts'

/** What a slack is known for: a stitch, or a strand. */
export type SlackKind = StitchKind | 'strand'

/**
 * Thread used over thread measured along the middle of holes and straight from hole end to hole end.
 *
 * Above 1 because thread wanders in the hole and is never drawn quite straight; below it nothing can
 * go by more than the corners it cuts. The workshop's own left-over lengths replace these.
 *
 * @source Chosen by us from mechanics: tension in brick, square and ladder work is high (3 %), a loom
 *   weft is drawn flat (2 %), strands hang loose (4 %); the range is that of hands, 8 % either way.
 */
const STITCH_SLACK: Readonly<Record<SlackKind, number>> = {
  brick: 1.03,
  peyote: 1.03,
  square: 1.03,
  loom: 1.02,
  ladder: 1.03,
  herringbone: 1.03,
  'right-angle-weave': 1.03,
  strand: 1.04,
}

/** Twisted and flat nylon stretches under the hand and draws back; braid and bonded cord hardly do. */
const THREAD_SLACK: Readonly<Record<ThreadConstruction, number>> = {
  braided: 1,
  bonded: 1,
  twisted: 0.99,
  flat: 0.99,
}

const HANDS = 0.08

/** The slack of a stitch in a thread, with the range hands differ by. */
export function threadSlack(kind: SlackKind, construction: ThreadConstruction): Spread {
  const slack = STITCH_SLACK[kind] * THREAD_SLACK[construction]
  return estimated(slack * (1 - HANDS), slack, slack * (1 + HANDS))
}
