import { exactly } from '../units/spread.ts'
import { addSpreads, scaleSpread, wholeSpread } from '../units/spread-arithmetic.ts'
import type { ReadContext } from './read-options.ts'
import type { ReadPart } from './read-part.ts'
import type { LabourReading } from './reading.ts'

/** Labour of one unit: set-up, each part's stitching for all its copies, finishing; the maker's own figures first. */
export function readLabour({ body, pace }: ReadContext, parts: readonly ReadPart[]): LabourReading {
  const setUpS = body.setUpS === undefined ? pace.setUpS : exactly(body.setUpS)
  const finishingS = body.finishingS === undefined ? pace.finishingS : exactly(body.finishingS)
  const stitchingS = addSpreads(
    parts.map(({ reading, copies }) => scaleSpread(reading.labourS, copies)),
  )
  return {
    setUpS: wholeSpread(setUpS),
    stitchingS: wholeSpread(stitchingS),
    finishingS: wholeSpread(finishingS),
    totalS: wholeSpread(addSpreads([setUpS, stitchingS, finishingS])),
  }
}
