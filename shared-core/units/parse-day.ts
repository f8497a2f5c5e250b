import { ok } from '../result.ts'
import { addDays, type CalendarDate, dateParts, daysBetween, isoWeekday } from './calendar-date.ts'
import { formatDate, formatRelativeDays, WEEKDAYS } from './format-date.ts'
import { parseDate } from './parse-date.ts'
import { type ParseOptions, type ParseResult, quoted, refuseText } from './parse-options.ts'
import { tidyText } from './tidy-text.ts'

type DayOptions = Pick<ParseOptions, 'field' | 'line'> & Readonly<{ today: CalendarDate }>

const MOST_DAYS_AWAY = 3_650

/**
 * A day as it is said at a workbench: whatever `parseDate` reads, and beside it `today`, `tomorrow`,
 * `yesterday`, `in 9 days`, `3 days ago`, `4 Dec`, `4.12.`, each with its weekday before it or not.
 *
 * Without a year the nearest such day to `today` is meant, before or after, that falls on the weekday
 * if one is named. A weekday must be the day's own. Understood is the day with how far away it is.
 * Refusals: those of `parseDate`, and `other-weekday`.
 */
export function parseDay(text: string, options: DayOptions): ParseResult<CalendarDate> {
  const { today, ...place } = options
  const tidy = tidyText(text)
  const { weekday, rest } = splitWeekday(tidy)
  const said = saidDay(rest, today) ?? nearest(rest, today, weekday)
  const read = said === undefined ? parseDate(rest === '' ? text : rest, place) : ok(said)
  if (!read.ok) return quoteWhole(read, rest, text)
  const day = typeof read.value === 'string' ? read.value : read.value.value
  if (weekday !== undefined && weekday !== weekdayOf(day)) {
    return refuseText(place, {
      code: 'other-weekday',
      message: `${quoted(text)} names ${weekday}, but that day is ${formatDate(day)}.`,
      next: 'Leave the weekday out, or type the day that is meant.',
    })
  }
  return ok({
    value: day,
    understood: `${formatDate(day, today)}, ${formatRelativeDays(day, today)}`,
  })
}

type Refused = Extract<ParseResult<CalendarDate>, Readonly<{ ok: false }>>

/** The refusal quotes all that was typed, the weekday too. */
function quoteWhole(refused: Refused, rest: string, text: string): Refused {
  const message = refused.error.message.replace(quoted(rest), () => quoted(text))
  return { ...refused, error: { ...refused.error, message } }
}

function splitWeekday(tidy: string): Readonly<{ weekday: string | undefined; rest: string }> {
  const match = /^(mon|tue|wed|thu|fri|sat|sun)[a-z]*[.,]? (?=\S)/i.exec(tidy)
  if (match === null) return { weekday: undefined, rest: tidy }
  const weekday = WEEKDAYS.find((day) => day.toLowerCase() === match[1]?.toLowerCase())
  return { weekday, rest: tidy.slice(match[0].length) }
}

function saidDay(tidy: string, today: CalendarDate): CalendarDate | undefined {
  const words = tidy.toLowerCase()
  const named = { yesterday: -1, today: 0, tomorrow: 1 }[words]
  if (named !== undefined) return addDays(today, named)
  const away = /^(?:in )?(\d{1,4}) days?( ago)?$/.exec(words)
  const days = Number(away?.[1])
  if (away === null || days > MOST_DAYS_AWAY) return undefined
  return addDays(today, away[2] === undefined ? days : -days)
}

/** A day and a month without a year, in the year that puts it nearest to today, on its weekday if it can. */
function nearest(
  tidy: string,
  today: CalendarDate,
  weekday: string | undefined,
): CalendarDate | undefined {
  const { year } = dateParts(today)
  const days = [year - 1, year, year + 1]
    .flatMap((at) => {
      const read = parseDate(withYear(tidy, at))
      return read.ok ? [read.value.value] : []
    })
    .toSorted((a, b) => Math.abs(daysBetween(today, a)) - Math.abs(daysBetween(today, b)))
  return days.find((day) => weekdayOf(day) === weekday) ?? days[0]
}

function weekdayOf(day: CalendarDate): string | undefined {
  return WEEKDAYS[isoWeekday(day) - 1]
}

function withYear(tidy: string, year: number): string {
  return /^\d{1,2}\. ?\d{1,2}\.$/.test(tidy) ? `${tidy}${year}` : `${tidy} ${year}`
}
