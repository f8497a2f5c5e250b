import { toEvents } from '../route/event-list.ts'
import type { BenchStep, RouteEvent } from '../route/route.ts'
import type { PartReading } from './reading.ts'

/** What is written out only when asked for. */
export type WrittenOut = Readonly<{
  steps: () => readonly BenchStep[]
  words: () => readonly string[]
}>

/** A part's reading whose events, steps and words are written out on first use and kept. */
export function lazyPart(
  known: Omit<PartReading, 'events' | 'steps' | 'words'>,
  { steps, words }: WrittenOut,
): PartReading {
  let keptEvents: readonly RouteEvent[] | undefined
  let keptSteps: readonly BenchStep[] | undefined
  let keptWords: readonly string[] | undefined
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
  }
}
