import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays, calendarDate, dateParts } from '../../../shared-core/units/calendar-date.ts'
import { formatDate, formatRelativeDays } from '../../../shared-core/units/format-date.ts'
import { parseDate } from '../../../shared-core/units/parse-date.ts'

const anyDate = fc
  .integer({ min: 0, max: 100_000 })
  .map((days) => addDays(calendarDate('1900-01-01'), days))

describe('parseDate', () => {
  it.each([
    ['03.02.2026', '2026-02-03'],
    ['3. 2. 2026', '2026-02-03'],
    ['2026-02-03', '2026-02-03'],
    ['2026/2/3', '2026-02-03'],
    ['3 Feb 2026', '2026-02-03'],
    ['3rd February 2026', '2026-02-03'],
    ['Feb 3, 2026', '2026-02-03'],
    ['3-Feb-2026', '2026-02-03'],
    ['29.02.2024', '2024-02-29'],
    ['13/02/2026', '2026-02-13'],
    ['02/13/2026', '2026-02-13'],
    ['02/02/2026', '2026-02-02'],
    [' 3\u00a0Feb 2026 ', '2026-02-03'],
  ])('reads %j as %s', (text, value) => {
    expect(parseDate(text)).toMatchObject({ ok: true, value: { value } })
  })

  it('takes the order it is told for slashes and dashes', () => {
    expect(parseDate('03/02/2026', { order: 'day-month' })).toMatchObject({
      value: { value: '2026-02-03', understood: 'Tue 3 Feb 2026' },
    })
    expect(parseDate('03-02-2026', { order: 'month-day' })).toMatchObject({
      value: { value: '2026-03-02' },
    })
  })

  it('refuses an ambiguous date and names both readings', () => {
    expect(parseDate('03/02/2026', { field: 'due', line: 4 })).toEqual({
      ok: false,
      error: {
        code: 'ambiguous-date',
        message: '“03/02/2026” can be read as 3 Feb 2026 or as 2 Mar 2026.',
        next: 'Type 3 Feb 2026 or 2 Mar 2026.',
        field: 'due',
        line: 4,
      },
    })
  })

  it.each([
    ['31.02.2026', 'no-such-day'],
    ['29.02.2025', 'no-such-day'],
    ['13/13/2026', 'no-such-day'],
    ['0026-02-03', 'no-such-day'],
    ['03.02.26', 'not-a-date'],
    ['soon', 'not-a-date'],
    ['3 Ju 2026', 'not-a-date'],
    ['3 Foo 2026', 'not-a-date'],
    ['2026-02/03', 'not-a-date'],
    ['  ', 'empty'],
  ])('refuses %j: %s', (text, code) => {
    expect(parseDate(text)).toMatchObject({ ok: false, error: { code } })
  })

  it('refuses an order that makes no day', () => {
    expect(parseDate('13/02/2026', { order: 'month-day' })).toMatchObject({
      error: { code: 'no-such-day' },
    })
  })

  it('reads back every way it is written', () => {
    fc.assert(
      fc.property(anyDate, (date) => {
        const { year, month, day } = dateParts(date)
        for (const text of [date, `${day}.${month}.${year}`, formatDate(date).slice(4)]) {
          expect(parseDate(text)).toMatchObject({ ok: true, value: { value: date } })
        }
      }),
    )
  })
})

describe('formatDate', () => {
  const today = calendarDate('2026-11-25')

  it('names the weekday, and the year unless it is this one', () => {
    expect(formatDate(calendarDate('2026-12-04'), today)).toBe('Fri 4 Dec')
    expect(formatDate(calendarDate('2027-01-04'), today)).toBe('Mon 4 Jan 2027')
    expect(formatDate(calendarDate('2026-12-04'))).toBe('Fri 4 Dec 2026')
  })

  it.each([
    [0, 'today'],
    [1, 'tomorrow'],
    [-1, 'yesterday'],
    [9, 'in 9 days'],
    [-3, '3 days ago'],
  ])('%i days away is %s', (days, text) => {
    expect(formatRelativeDays(addDays(today, days), today)).toBe(text)
  })
})
