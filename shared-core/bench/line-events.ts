import {
  ADD_THREAD,
  AROUND_BEAD,
  PASS,
  REINFORCE,
  STEP_UP,
  TURN,
  WARP,
} from '../route/event-codes.ts'
import type { EventList } from '../route/event-list.ts'
import type { BenchStep } from '../route/route.ts'
import type { ReaderLine } from './reader-script.ts'

type LineEvents = Pick<ReaderLine, 'threadMm' | 'warps' | 'turns' | 'hasStepUp' | 'hasReinforce'>

/** What a line's steps hold beside beads and bridges. */
export function lineEvents(route: EventList, steps: readonly BenchStep[]): LineEvents {
  const from = steps[0]?.fromEvent ?? 0
  const to = (steps.at(-1)?.toEvent ?? -1) + 1
  const events = Array.from({ length: to - from }, (_, at) => from + at)
  const of = (kind: number) => events.filter((index) => route.kind[index] === kind)
  const [thread] = of(ADD_THREAD)
  const warps = of(WARP)
  const turns = of(TURN).map((index) => route.code[index])
  const purposes = new Set(of(PASS).map((index) => (route.code[index] ?? 0) >> 2))
  return {
    threadMm: thread === undefined ? undefined : route.a[thread],
    warps:
      warps[0] === undefined
        ? undefined
        : { count: warps.length, lengthMm: route.a[warps[0]] ?? 0 },
    turns: {
      roundEdge: turns.some((around) => around !== AROUND_BEAD),
      roundBead: turns.includes(AROUND_BEAD),
    },
    hasStepUp: purposes.has(STEP_UP),
    hasReinforce: purposes.has(REINFORCE),
  }
}
