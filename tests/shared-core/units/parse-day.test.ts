import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addDays, calendarDate } from '../../../shared-core/units/calendar-date.ts'
import { formatDate, formatRelativeDays } from '../../../shared-core/units/format-date.ts'
import { parseDay } from '../../../shared-core/units/parse-day.ts'

const today = calendarDate('2026-11-25')
const read = (text: string) => parseDay(text, { today })

describe('parseDay', () => {
  it.each([
    ['2026-12-04', '2026-12-04'],
    ['04.12.2026', '2026-12-04'],
    ['Fri 4 Dec', '2026-12-04'],
    ['Friday, 4 December 2026', '2026-12-04'],
    ['4 dec', '2026-12-04'],
    ['4.12.', '2026-12-04'],
    ['in 9 days', '2026-12-04'],
    ['9 days', '2026-12-04'],
    ['today', '2026-11-25'],
    ['Tomorrow', '2026-11-26'],
    ['yesterday', '2026-11-24'],
    ['3 days ago', '2026-11-22'],
    // Nearest to the end of November: January to come, July gone by.
    ['15 Jan', '2027-01-15'],
    ['1 July', '2026-07-01'],
    // The weekday tells the year: this May is further off than the next.
    ['Tue 26 May', '2026-05-26'],
    ['Thu 1 Jan', '2026-01-01'],
    // Only one of the three years about has the day.
    ['29 Feb 2028', '2028-02-29'],
  ])('reads %j as %s', (text, value) => {
    expect(read(text)).toMatchObject({ ok: true, value: { value } })
  })

  it('means the day gone by at the turn of the year, where that is nearer', () => {
    const newYear = { today: calendarDate('2027-01-05') }
    expect(parseDay('20 Dec', newYear)).toMatchObject({ value: { value: '2026-12-20' } })
  })

  it('says the day and how far away it is', () => {
    expect(read('4.12.2026')).toMatchObject({ value: { understood: 'Fri 4 Dec, in 9 days' } })
  })

  it.each([
    ['31.02.2026', 'no-such-day', '“31.02.2026”'],
    ['Fri 31 Feb 2026', 'no-such-day', '“Fri 31 Feb 2026”'],
    ['03/02/2026', 'ambiguous-date', '“03/02/2026”'],
    ['Wed 5 Dec', 'other-weekday', 'Sat 5 Dec 2026'],
    ['29 Feb', 'not-a-date', '“29 Feb”'],
    ['9 weeks', 'not-a-date', '“9 weeks”'],
    ['in 9999 days', 'not-a-date', '“in 9999 days”'],
    ['-3', 'not-a-date', '“-3”'],
    ['🪡', 'not-a-date', '“🪡”'],
    ['x'.repeat(10_000), 'not-a-date', 'x…”'],
    ['', 'empty', 'Nothing was typed.'],
  ])('refuses %j: %s', (text, code, says) => {
    const refused = read(text)
    expect(refused).toMatchObject({ ok: false, error: { code } })
    expect(refused.ok ? '' : refused.error.message).toContain(says)
  })

  it('reads back every day as it is written, and as far as it is away', () => {
    fc.assert(
      fc.property(fc.integer({ min: -3_000, max: 3_000 }), (days) => {
        const day = addDays(today, days)
        for (const text of [formatDate(day, today), formatDate(day), day]) {
          expect(read(text)).toMatchObject({ ok: true, value: { value: day } })
        }
        if (Math.abs(days) > 999) return
        expect(read(formatRelativeDays(day, today))).toMatchObject({ value: { value: day } })
      }),
    )
  })
})
