import type { SlackKind } from '../route/thread-slack.ts'
import type { Spread } from '../units/spread.ts'
import { addSpreads, scaleSpread, wholeSpread } from '../units/spread-arithmetic.ts'
import type { Pace } from './labour-pace.ts'

/** What there is to do at one part of a unit: beads and rows of one copy, by stitch or strand, and the copies. */
export type PartWork = Readonly<{ kind: SlackKind; beads: number; rows: number; copies: number }>

/**
 * Seconds to stitch one copy of a part, in whole seconds: beads and turnings at a workshop's pace.
 *
 * As well known as the pace of the beads: what is learnt of a stitch is learnt with its turnings.
 */
export function stitchingS(work: Omit<PartWork, 'copies'>, pace: Pace): Spread {
  const onBeads = scaleSpread(pace.perBeadS[work.kind], work.beads)
  const all = wholeSpread(addSpreads([onBeads, scaleSpread(pace.perRowS, work.rows)]))
  return { ...all, basis: work.beads > 0 ? onBeads.basis : all.basis }
}
