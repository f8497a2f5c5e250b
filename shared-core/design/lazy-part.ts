import { toEvents } from '../route/event-list.ts'
import type { BenchStep, RouteEvent } from '../route/route.ts'
import type { RowStart } from '../route/row-starts.ts'
import type { PartReading } from './reading.ts'

/** What is written out only when asked for. */
export type WrittenOut = Readonly<{
  steps: () => readonly BenchStep[]
  words: () => readonly string[]
  rowStarts: () => readonly RowStart[]
}>

/** A part's reading whose events, steps, words and rows are written out on first use and kept. */
export function lazyPart(
  known: Omit<PartReading, keyof WrittenOut | 'events'>,
  { steps, words, rowStarts }: WrittenOut,
): PartReading {
  let keptEvents: readonly RouteEvent[] | undefined
  let keptSteps: readonly BenchStep[] | undefined
  let keptWords: readonly string[] | undefined
  let keptRows: readonly RowStart[] | undefined
  return {
    ...known,
    get events() {
      keptEvents ??= toEvents(known.route)
      return keptEvents
    },
    get steps() {
      keptSteps ??= steps()
      return keptSteps
    },
    get words() {
      keptWords ??= words()
      return keptWords
    },
    get rowStarts() {
      keptRows ??= rowStarts()
      return keptRows
    },
  }
}
