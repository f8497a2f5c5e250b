import type { BeadIndex } from '../chart/bead-index.ts'
import { type StitchKind, slotLabel } from '../chart/chart.ts'
import { beadRuns } from '../route/bead-rows.ts'
import type { StepWords } from '../route/bench-steps.ts'
import { wordRow } from '../words/row-place.ts'

/** What a panel's steps are told with. Rows are counted as at the bench: peyote counts half rows, as its word chart does. */
export function panelStepWords(stitch: StitchKind, index: BeadIndex, strands: 1 | 2): StepWords {
  return {
    letterOf: (bead) => slotLabel(index.slotOf[bead] ?? 0),
    runs: beadRuns(index),
    rowNumber: (bead) => wordRow(stitch, index, bead),
    growsUp: true,
    isDoubled: strands === 2,
  }
}
