import type { StepBounds } from './bench-steps.ts'
import { ADD_THREAD, CUT, FINISH, JOIN, KNOT, PASS, PICK_UP, ROW, WARP } from './event-codes.ts'
import type { EventList } from './event-list.ts'

/** What a step is part of. `thread` is everything done to ends: woven in, cut, threaded anew. */
export type Manner = 'work' | 'thread' | 'warp'

/** The steps of one line: `row` is the event that begins a row, or -1. */
export type LineGroup<S extends StepBounds> = Readonly<{
  manner: Manner
  row: number
  steps: S[]
}>

/** Steps by the lines they stand in: a row from where it begins, a change of thread, warps, ends. */
export function lineGroups<S extends StepBounds>(
  route: EventList,
  steps: readonly S[],
): readonly LineGroup<S>[] {
  const groups: LineGroup<S>[] = []
  for (const step of steps) {
    const manner = mannerOf(route, step)
    const row = rowIn(route, step)
    const last = groups.at(-1)
    if (last !== undefined && last.manner === manner && row < 0) last.steps.push(step)
    else groups.push({ manner, row, steps: [step] })
  }
  return groups
}

function mannerOf(route: EventList, { fromEvent, toEvent }: StepBounds): Manner {
  const kinds = route.kind.subarray(fromEvent, toEvent + 1)
  if (kinds.includes(PICK_UP) || kinds.includes(ROW)) return 'work'
  if (kinds.includes(WARP)) return 'warp'
  if (kinds.includes(ADD_THREAD) || kinds.includes(CUT) || kinds.includes(KNOT)) return 'thread'
  const [first] = kinds
  const isPass = first === PASS || first === JOIN
  return isPass && (route.code[fromEvent] ?? 0) >> 2 === FINISH ? 'thread' : 'work'
}

/** The `row` event in a step, or -1. */
function rowIn({ kind }: EventList, { fromEvent, toEvent }: StepBounds): number {
  const at = kind.subarray(fromEvent, toEvent + 1).indexOf(ROW)
  return at < 0 ? -1 : fromEvent + at
}
