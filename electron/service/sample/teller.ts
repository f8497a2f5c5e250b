import type { CallOutput, ParsedInput } from '../../../shared-core/contract/calls.ts'
import { addDays, calendarDate, isoWeekday } from '../../../shared-core/units/calendar-date.ts'
import type { ActName } from '../handlers/handler.ts'
import { type Circumstances, perform } from '../perform.ts'
import type { View } from '../store/view.ts'

/** Tells the past through the same acts as the maker's own, each on its day. */
export type Teller = Readonly<{
  view: View
  /** The day so many days before the first day, or after it for a number below 0. */
  day: (daysAgo: number) => string
  /** The moment of the next step of that day. */
  now: (daysAgo: number) => number
  tell: <N extends ActName>(
    daysAgo: number,
    name: N,
    input: ParsedInput<N>,
  ) => Promise<CallOutput<N>>
}>

// The workshop opens at nine; each step of a day comes five minutes after the one before.
const OPENS = 'T09:00:00'
const STEP_MS = 5 * 60_000

const SATURDAY = 6

/** The Saturday after a day, or on it; the one before where that has not come yet. */
export function saturdayNear({ day }: Pick<Teller, 'day'>, daysAgo: number): number {
  const wait = (SATURDAY - isoWeekday(calendarDate(day(daysAgo))) + 7) % 7
  return daysAgo - wait >= 0 ? daysAgo - wait : daysAgo - wait + 7
}

/** A teller whose first day is `today`. */
export function openTeller(view: View, today: string, circumstances: Circumstances): Teller {
  const first = calendarDate(today)
  const day = (daysAgo: number) => addDays(first, -daysAgo)
  const told = new Map<number, number>()
  const now = (daysAgo: number) =>
    Date.parse(`${day(daysAgo)}${OPENS}`) + (told.get(daysAgo) ?? 0) * STEP_MS
  return {
    view,
    day,
    now,
    tell: async (daysAgo, name, input) => {
      const atMs = now(daysAgo)
      told.set(daysAgo, (told.get(daysAgo) ?? 0) + 1)
      return (await perform(view, name, input, { ...circumstances, atMs })).value
    },
  }
}
