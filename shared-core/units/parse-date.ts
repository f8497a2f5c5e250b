import type { Refusal } from '../refusal.ts'
import { ok } from '../result.ts'
import { type CalendarDate, dateFromParts, dayExists } from './calendar-date.ts'
import { formatDate, MONTHS } from './format-date.ts'
import { type ParseOptions, type ParseResult, quoted, refuseText } from './parse-options.ts'
import { tidyText } from './tidy-text.ts'

/** Which of the two small numbers in 03/02/2026 comes first. */
export type DateOrder = 'day-month' | 'month-day'

type DateOptions = Pick<ParseOptions, 'field' | 'line'> &
  Readonly<{ order?: DateOrder | undefined }>
type Triple = Readonly<{ year: number; month: number; day: number }>

const MONTH_NAMES = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
] as const

/**
 * A day from `2026-02-03`, `03.02.2026` (day first), `3 Feb 2026`, `February 3, 2026`, `13/02/2026`.
 *
 * With slashes or dashes the order of day and month is taken from `options.order`, else from the
 * only reading that exists; where both exist (`03/02/2026`) the text is refused with both named.
 * The year has four digits, 1900 to 2199. Refusals: `empty`, `not-a-date`, `no-such-day`,
 * `ambiguous-date`.
 */
export function parseDate(text: string, options: DateOptions = {}): ParseResult<CalendarDate> {
  const tidy = tidyText(text)
  if (tidy === '') return refuseText(options, { ...notADate(text), ...EMPTY })
  const readings = readingsOf(tidy, options.order)
  if (readings.length === 0) return refuseText(options, notADate(text))
  const days = readings.filter(exists).map((at) => dateFromParts(at.year, at.month, at.day))
  const [first, second] = [...new Set(days)]
  if (first === undefined) return refuseText(options, noSuchDay(text))
  if (second !== undefined) return refuseText(options, ambiguous(text, first, second))
  return ok({ value: first, understood: formatDate(first) })
}

const EMPTY = { code: 'empty', message: 'Nothing was typed.' } as const

/** Every triple the shape of the text allows, whether or not the day exists. */
function readingsOf(tidy: string, order: DateOrder | undefined): readonly Triple[] {
  const yearFirst = /^(\d{4})([-./])(\d{1,2})\2(\d{1,2})$/.exec(tidy)
  if (yearFirst) return [triple(yearFirst[1], yearFirst[3], yearFirst[4])]
  const dotted = /^(\d{1,2})\. ?(\d{1,2})\. ?(\d{4})$/.exec(tidy)
  if (dotted) return [triple(dotted[3], dotted[2], dotted[1])]
  const yearLast = /^(\d{1,2})([-/])(\d{1,2})\2(\d{4})$/.exec(tidy)
  if (yearLast) {
    const dayFirst = triple(yearLast[4], yearLast[3], yearLast[1])
    const monthFirst = triple(yearLast[4], yearLast[1], yearLast[3])
    if (order === 'day-month') return [dayFirst]
    return order === 'month-day' ? [monthFirst] : [dayFirst, monthFirst]
  }
  return namedMonth(tidy)
}

function namedMonth(tidy: string): readonly Triple[] {
  const match =
    /^(?<day>\d{1,2})(?:st|nd|rd|th)?\.?[ -](?<month>\p{L}+)\.?,?[ -](?<year>\d{4})$/u.exec(tidy) ??
    /^(?<month>\p{L}+)\.? (?<day>\d{1,2})(?:st|nd|rd|th)?,? (?<year>\d{4})$/u.exec(tidy)
  const month = monthOf(match?.groups?.['month'] ?? '')
  return month === undefined
    ? []
    : [triple(match?.groups?.['year'], String(month), match?.groups?.['day'])]
}

function monthOf(name: string): number | undefined {
  const typed = name.toLowerCase()
  if (typed.length < 3) return undefined
  const at = MONTH_NAMES.findIndex((full) => full.startsWith(typed))
  return at < 0 ? undefined : at + 1
}

function triple(year = '', month = '', day = ''): Triple {
  return { year: Number(year), month: Number(month), day: Number(day) }
}

function exists(at: Triple): boolean {
  return at.year >= 1900 && at.year <= 2199 && dayExists(at.year, at.month, at.day)
}

type Sentence = Omit<Refusal, 'field' | 'line'>
const ACCEPTED = 'Type a day such as 2026-02-03, 03.02.2026 or 3 Feb 2026.'

function notADate(text: string): Sentence {
  return { code: 'not-a-date', message: `${quoted(text)} is not a date.`, next: ACCEPTED }
}

function noSuchDay(text: string): Sentence {
  return {
    code: 'no-such-day',
    message: `${quoted(text)} is not a day of the calendar between 1900 and 2199.`,
    next: ACCEPTED,
  }
}

function ambiguous(text: string, a: CalendarDate, b: CalendarDate): Sentence {
  const [one, other] = [spoken(a), spoken(b)]
  return {
    code: 'ambiguous-date',
    message: `${quoted(text)} can be read as ${one} or as ${other}.`,
    next: `Type ${one} or ${other}.`,
  }
}

function spoken(date: CalendarDate): string {
  const [year, month, day] = date.split('-')
  return `${Number(day)} ${MONTHS[Number(month) - 1]} ${year}`
}
