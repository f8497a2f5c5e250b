import { describe, expect, it } from 'vitest'
import { type CalendarDate, calendarDate } from '../../../shared-core/units/calendar-date.ts'
import { type Count, count } from '../../../shared-core/units/count.ts'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { type DurationS, durationS } from '../../../shared-core/units/duration.ts'
import { type ThreadMm, threadMm } from '../../../shared-core/units/length.ts'
import { type MassMg, massMg } from '../../../shared-core/units/mass.ts'
import { type Money, money } from '../../../shared-core/units/money.ts'
import { type Ratio, ratio } from '../../../shared-core/units/ratio.ts'

describe('branded units', () => {
  it('cannot be mixed, and plain numbers and texts are none of them', () => {
    // The type checker reads these lines; each must be an error or the check of types fails.
    // @ts-expect-error a length is no mass
    const a: MassMg = threadMm(1)
    // @ts-expect-error a mass is no length
    const b: ThreadMm = massMg(1)
    // @ts-expect-error a count is no time
    const c: DurationS = count(1)
    // @ts-expect-error a plain number is no count
    const d: Count = 1
    // @ts-expect-error a plain text is no date
    const e: CalendarDate = '2026-12-04'
    // @ts-expect-error a plain text is no ratio
    const f: Ratio = '0.4'
    // @ts-expect-error a date is no ratio
    const g: Ratio = calendarDate('2026-12-04')
    // @ts-expect-error a number is no money
    const h: Money = 420
    // @ts-expect-error a text is no currency
    const i: Money = money(420, 'EUR')
    // @ts-expect-error a ratio is no number to calculate with
    const j: number = ratio('0.4')
    expect([a, b, c, d, e, f, g, h, i, j]).toHaveLength(10)
  })

  it.each([
    ['massMg', massMg],
    ['threadMm', threadMm],
    ['durationS', durationS],
    ['count', count],
  ] as const)('%s takes whole numbers only', (name, make) => {
    expect(make(-0)).toBe(0)
    for (const value of [1.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53]) {
      expect(() => make(value)).toThrow(`${name}: expected a whole number`)
    }
  })

  it('money takes whole minor units only', () => {
    expect(() => money(4.2, currencyCode('EUR'))).toThrow('whole minor units')
    expect(Object.is(money(-0, currencyCode('EUR')).amountMinor, 0)).toBe(true)
  })
})
