import type { Id } from './quantity.ts'

/** A day of the Gregorian calendar as `YYYY-MM-DD`; texts sort as the days do. */
export type CalendarDate = Id<'calendar date'>

/** Whether the text is `YYYY-MM-DD` and names a day that exists. */
export function isCalendarDate(text: string): text is CalendarDate {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false
  return dayExists(Number(text.slice(0, 4)), Number(text.slice(5, 7)), Number(text.slice(8)))
}

/** The only door to `CalendarDate`. @throws RangeError unless the text names a day that exists. */
export function calendarDate(text: string): CalendarDate {
  if (!isCalendarDate(text)) throw new RangeError(`calendarDate: expected YYYY-MM-DD, got ${text}`)
  return text
}

/** Whether year (1 to 9999), month (1 to 12) and day make a day of the Gregorian calendar. */
export function dayExists(year: number, month: number, day: number): boolean {
  if (year < 1 || year > 9999 || month < 1 || month > 12) return false
  return day >= 1 && day <= daysInMonth(year, month)
}

/** The day so many days later, or earlier for a negative number. @throws RangeError beyond 1 to 9999. */
export function addDays(date: CalendarDate, days: number): CalendarDate {
  if (!Number.isSafeInteger(days)) throw new RangeError(`addDays: ${days} is not whole`)
  return fromDayNumber(dayNumber(date) + days)
}

/** Days from the first date to the second: 1 from today to tomorrow, negative backwards. */
export function daysBetween(from: CalendarDate, to: CalendarDate): number {
  return dayNumber(to) - dayNumber(from)
}

/** The day of the week, 1 for Monday to 7 for Sunday. @source ISO 8601 */
export function isoWeekday(date: CalendarDate): 1 | 2 | 3 | 4 | 5 | 6 | 7 {
  // Day 0 of the count, 1970-01-01, was a Thursday.
  const weekday = ((((dayNumber(date) + 3) % 7) + 7) % 7) + 1
  return weekday as 1 | 2 | 3 | 4 | 5 | 6 | 7
}

/** The year, month and day as numbers. */
export function dateParts(
  date: CalendarDate,
): Readonly<{ year: number; month: number; day: number }> {
  return {
    year: Number(date.slice(0, 4)),
    month: Number(date.slice(5, 7)),
    day: Number(date.slice(8, 10)),
  }
}

/** The date of three numbers. @throws RangeError when there is no such day. */
export function dateFromParts(year: number, month: number, day: number): CalendarDate {
  return calendarDate(`${padded(year, 4)}-${padded(month, 2)}-${padded(day, 2)}`)
}

function padded(value: number, width: number): string {
  return String(value).padStart(width, '0')
}

function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeapYear(year) ? 29 : 28
  return [4, 6, 9, 11].includes(month) ? 30 : 31
}

function isLeapYear(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
}

/**
 * Days since 1970-01-01.
 *
 * Years counted from March, so that the leap day comes last and months have a fixed rhythm
 * (153 days in five). @source Fliegel & Van Flandern, Communications of the ACM 11 (1968), 657
 */
function dayNumber(date: CalendarDate): number {
  const { year, month, day } = dateParts(date)
  const y = month > 2 ? year : year - 1
  const era = Math.floor(y / 400)
  const yearOfEra = y - era * 400
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1
  const dayOfEra =
    yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear
  return era * 146_097 + dayOfEra - 719_468
}

function fromDayNumber(days: number): CalendarDate {
  const shifted = days + 719_468
  const era = Math.floor(shifted / 146_097)
  const dayOfEra = shifted - era * 146_097
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  )
  const dayOfYear =
    dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100))
  const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153)
  const day = dayOfYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9
  return dateFromParts(yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, day)
}
