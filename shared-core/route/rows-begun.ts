import { PICK_UP } from './event-codes.ts'
import type { EventList } from './event-list.ts'

/**
 * The numbers, ascending, of the rows that a `row` event begins: one, two where peyote's first two
 * are strung together, none where nothing is picked up at once.
 *
 * @param rowNumber - A row's number as the maker counts it, from one of its beads.
 * @param index - The `row` event.
 */
export function rowsBegun(
  events: EventList,
  rowNumber: (bead: number) => number,
  index: number,
): readonly number[] {
  if (events.kind[index + 1] !== PICK_UP) return []
  const from = events.a[index + 1] ?? 0
  const count = events.b[index + 1] ?? 0
  const picked = Array.from(events.pool.subarray(from, from + count), rowNumber)
  const numbers = [...new Set(picked)].sort((a, b) => a - b)
  return numbers.length === 2 ? numbers : picked.slice(0, 1)
}
