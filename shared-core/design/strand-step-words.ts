import { slotLabel } from '../chart/chart.ts'
import type { JoinedWords, StepWords } from '../route/bench-steps.ts'

/** What a strand's steps are told with: it has neither rows nor bridges, but may hang from a panel. */
export function strandStepWords(
  slots: Uint16Array,
  strands: 1 | 2,
  joined: JoinedWords | undefined,
): StepWords {
  return {
    letterOf: (bead) => slotLabel(slots[bead] ?? 0),
    runs: undefined,
    rowNumber: () => 1,
    growsUp: false,
    isDoubled: strands === 2,
    ...(joined && { joined }),
  }
}
