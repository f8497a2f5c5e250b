import { exactly } from '../units/spread.ts'
import { addSpreads, scaleSpread, wholeSpread } from '../units/spread-arithmetic.ts'
import type { DesignBody } from './design.ts'
import type { Pace } from './labour-pace.ts'
import { type PartWork, stitchingS } from './part-work.ts'
import type { LabourReading } from './reading.ts'

/** The maker's own seconds for a unit's set-up and finishing, where she has said them. */
export type OwnSeconds = Pick<DesignBody, 'setUpS' | 'finishingS'>

/**
 * Labour of one unit at a workshop's pace: set-up, each part's stitching for all its copies, finishing.
 *
 * The maker's own figures come first. Whole seconds.
 */
export function readLabour(work: readonly PartWork[], own: OwnSeconds, pace: Pace): LabourReading {
  const setUpS = own.setUpS === undefined ? pace.setUpS : exactly(own.setUpS)
  const finishingS = own.finishingS === undefined ? pace.finishingS : exactly(own.finishingS)
  const stitching = addSpreads(work.map((part) => scaleSpread(stitchingS(part, pace), part.copies)))
  return {
    setUpS: wholeSpread(setUpS),
    stitchingS: wholeSpread(stitching),
    finishingS: wholeSpread(finishingS),
    totalS: wholeSpread(addSpreads([setUpS, stitching, finishingS])),
  }
}
