import { type CalendarDate, dateParts, daysBetween, isoWeekday } from './calendar-date.ts'
import { formatCount } from './format-number.ts'

/** Short weekday names, Monday first. */
export const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const
/** Short month names, January first. */
export const MONTHS = [
  'Jan',
  'Feb',
  'Mar',
  'Apr',
  'May',
  'Jun',
  'Jul',
  'Aug',
  'Sep',
  'Oct',
  'Nov',
  'Dec',
] as const

/**
 * A date as people say it: Fri 4 Dec, with its year unless it is the year of `today`.
 *
 * @example formatDate(calendarDate('2026-12-04'), calendarDate('2026-11-25')) // Fri 4 Dec
 */
export function formatDate(date: CalendarDate, today?: CalendarDate): string {
  const { year, month, day } = dateParts(date)
  const weekday = WEEKDAYS[isoWeekday(date) - 1]
  const thisYear = today !== undefined && dateParts(today).year === year
  return `${weekday} ${day} ${MONTHS[month - 1]}${thisYear ? '' : ` ${year}`}`
}

/** How far a date is from `today`: today, tomorrow, in 9 days, yesterday, 3 days ago. */
export function formatRelativeDays(date: CalendarDate, today: CalendarDate): string {
  const days = daysBetween(today, date)
  if (days === 0) return 'today'
  if (days === 1) return 'tomorrow'
  if (days === -1) return 'yesterday'
  return days > 0 ? `in ${formatCount(days)} days` : `${formatCount(-days)} days ago`
}
