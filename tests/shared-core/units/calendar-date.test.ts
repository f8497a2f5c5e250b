import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  addDays,
  calendarDate,
  dateParts,
  daysBetween,
  isCalendarDate,
  isoWeekday,
} from '../../../shared-core/units/calendar-date.ts'

const anyDate = fc
  .date({ min: new Date('0100-01-01'), max: new Date('9998-12-31'), noInvalidDate: true })
  .map((date) => calendarDate(date.toISOString().slice(0, 10)))

function utcDays(date: string): number {
  return Date.parse(`${date}T00:00:00Z`) / 86_400_000
}

describe('calendarDate', () => {
  it.each(['2026-02-31', '2025-02-29', '1900-02-29', '2026-13-01', '2026-00-10', '2026-1-1', ''])(
    'throws for %j',
    (text) => {
      expect(isCalendarDate(text)).toBe(false)
      expect(() => calendarDate(text)).toThrow('YYYY-MM-DD')
    },
  )

  it('knows the leap years', () => {
    for (const text of ['2024-02-29', '2000-02-29']) expect(isCalendarDate(text)).toBe(true)
  })

  it('gives its parts', () => {
    expect(dateParts(calendarDate('2026-12-04'))).toEqual({ year: 2026, month: 12, day: 4 })
  })
})

describe('addDays and daysBetween', () => {
  it.each([
    ['2026-02-28', 1, '2026-03-01'],
    ['2024-02-28', 1, '2024-02-29'],
    ['2026-12-31', 1, '2027-01-01'],
    ['2026-11-25', 9, '2026-12-04'],
    ['2026-03-01', -1, '2026-02-28'],
    ['1969-12-31', 1, '1970-01-01'],
    ['2000-01-01', 36_525, '2100-01-01'],
  ])('%s and %i days is %s', (from, days, to) => {
    expect(addDays(calendarDate(from), days)).toBe(to)
    expect(daysBetween(calendarDate(from), calendarDate(to))).toBe(days)
  })

  it('undo each other and keep the order of texts', () => {
    fc.assert(
      fc.property(anyDate, fc.integer({ min: -36_000, max: 36_000 }), (date, days) => {
        fc.pre(
          utcDays(date) + days > utcDays('0002-01-01') &&
            utcDays(date) + days < utcDays('9999-01-01'),
        )
        const later = addDays(date, days)
        expect(daysBetween(date, later)).toBe(days)
        expect(addDays(later, -days)).toBe(date)
        expect(later > date).toBe(days > 0)
      }),
    )
  })

  it('agree with the platform’s own calendar', () => {
    fc.assert(
      fc.property(anyDate, anyDate, (a, b) => {
        expect(daysBetween(a, b)).toBe(utcDays(b) - utcDays(a))
        expect(isoWeekday(a) % 7).toBe(new Date(`${a}T00:00:00Z`).getUTCDay())
      }),
    )
  })

  it('throws for part of a day and beyond the calendar', () => {
    expect(() => addDays(calendarDate('2026-01-01'), 0.5)).toThrow('not whole')
    expect(() => addDays(calendarDate('9999-12-31'), 1)).toThrow(RangeError)
  })
})
