import type { StepBounds, StepWords } from './bench-steps.ts'
import { stepBounds } from './bench-steps.ts'
import { PICK_UP } from './event-codes.ts'
import type { EventList } from './event-list.ts'
import { type LineGroup, lineGroups } from './line-groups.ts'
import { rowsBegun } from './rows-begun.ts'

/** Where the work on a row begins: its first step, and the row as the maker counts, or two strung together. */
export type RowStart = Readonly<{ step: number; rows: readonly number[] }>

type RowWords = Pick<StepWords, 'rowNumber'>

/** The first step of each row of a panel in order of work; none for the rest of a row with a new thread. */
export function rowStarts(route: EventList, words: RowWords): readonly RowStart[] {
  const starts: RowStart[] = []
  let step = 0
  for (const group of lineGroups(route, stepBounds(route))) {
    if (group.manner === 'work' && (group.row >= 0 || starts.length === 0)) {
      starts.push({ step, rows: rowsOfGroup(route, words, group) })
    }
    step += group.steps.length
  }
  return starts
}

/** The rows a line begins, as the maker counts them; none for a line that begins none. */
export function rowsOfGroup(
  route: EventList,
  { rowNumber }: RowWords,
  { row, steps }: LineGroup<StepBounds>,
): readonly number[] {
  if (row < 0) return []
  const begun = rowsBegun(route, rowNumber, row)
  if (begun.length > 0) return begun
  return [firstPicked(route, { rowNumber }, steps) ?? (route.a[row] ?? 0) + 1]
}

/** The row of the first bead picked up in some steps. */
function firstPicked(
  route: EventList,
  { rowNumber }: RowWords,
  steps: readonly StepBounds[],
): number | undefined {
  const [first] = steps
  const last = steps.at(-1)
  if (first === undefined || last === undefined) return undefined
  const at = route.kind.subarray(first.fromEvent, last.toEvent + 1).indexOf(PICK_UP)
  if (at < 0) return undefined
  return rowNumber(route.pool[route.a[first.fromEvent + at] ?? 0] ?? 0)
}
