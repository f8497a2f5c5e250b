import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { runningOut, type StockOutlook } from '../../../shared-core/buying/running-out.ts'
import { addDays, calendarDate, daysBetween } from '../../../shared-core/units/calendar-date.ts'

const today = calendarDate('2026-03-14')
const in_ = (days: number, quantity: number) => ({ on: addDays(today, days), quantity })
const outlook: StockOutlook = {
  today,
  onHand: 5000,
  promised: [],
  arriving: [],
  expectedPerDay: 0,
  leadDays: 7,
  safetyStock: 0,
}

describe('runningOut', () => {
  it('lasts while nothing is promised or expected', () => {
    expect(runningOut(outlook)).toEqual({ kind: 'lasts', days: 366 })
    expect(runningOut({ ...outlook, promised: [in_(9, 5000)] }).kind).toBe('lasts')
  })

  it('says on which day what history expects is more than there is', () => {
    expect(runningOut({ ...outlook, expectedPerDay: 400 })).toEqual({
      kind: 'runs out',
      on: '2026-03-27',
      because: 'expected',
      daysOfCover: 13,
      orderBy: '2026-03-20',
      isLate: false,
      quantity: 3000,
    })
  })

  it('says when promises alone need more, and that it is late to order', () => {
    const promised = [in_(3, 3000), in_(5, 2500)]
    expect(runningOut({ ...outlook, promised, expectedPerDay: 100 })).toMatchObject({
      on: '2026-03-19',
      because: 'promised',
      orderBy: '2026-03-12',
      isLate: true,
      quantity: 500,
    })
  })

  it('counts what is overdue today, and what arrives from its day on', () => {
    const promised = [in_(-4, 6000)]
    expect(runningOut({ ...outlook, promised })).toMatchObject({ daysOfCover: 0, isLate: true })
    const arriving = [in_(0, 1000)]
    expect(runningOut({ ...outlook, promised, arriving }).kind).toBe('lasts')
    const late = [in_(9, 5500)]
    expect(runningOut({ ...outlook, promised: [in_(10, 6000)], arriving: late }).kind).toBe('lasts')
    expect(runningOut({ ...outlook, promised: [in_(8, 6000)], arriving: late }).kind).toBe(
      'runs out',
    )
  })

  it('orders earlier and more to keep the safety stock', () => {
    const plain = runningOut({ ...outlook, expectedPerDay: 400 })
    const safe = runningOut({ ...outlook, expectedPerDay: 400, safetyStock: 800 })
    expect(plain).toMatchObject({ on: '2026-03-27', orderBy: '2026-03-20', quantity: 3000 })
    expect(safe).toMatchObject({ on: '2026-03-27', orderBy: '2026-03-18', quantity: 3800 })
  })

  it('agrees with walking day by day, and what it orders lasts another lead time', () => {
    const dated = fc.array(
      fc.record({
        day: fc.integer({ min: -5, max: 60 }),
        quantity: fc.integer({ min: 1, max: 900 }),
      }),
      { maxLength: 8 },
    )
    fc.assert(
      fc.property(
        dated,
        dated,
        fc.integer({ min: 0, max: 3000 }),
        fc.integer({ min: 0, max: 60 }),
        fc.integer({ min: 0, max: 20 }),
        (promises, arrivals, onHand, expectedPerDay, leadDays) => {
          const drawn: StockOutlook = {
            ...outlook,
            onHand,
            expectedPerDay,
            leadDays,
            promised: promises.map(({ day, quantity }) => in_(day, quantity)),
            arriving: arrivals.map(({ day, quantity }) => in_(day, quantity)),
          }
          const left = (day: number) => {
            const until = (list: typeof promises) =>
              list.reduce((sum, entry) => sum + (entry.day <= day ? entry.quantity : 0), 0)
            return onHand + until(arrivals) - Math.max(until(promises), expectedPerDay * day)
          }
          let day = 0
          while (day <= 366 && left(day) >= 0) day++
          const found = runningOut(drawn)
          if (found.kind === 'lasts') {
            expect(day).toBe(367)
            return
          }
          expect(found.daysOfCover).toBe(day)
          expect(daysBetween(today, found.on)).toBe(day)
          expect(daysBetween(found.orderBy, found.on)).toBe(leadDays)
          expect(left(day + leadDays) + found.quantity).toBeGreaterThanOrEqual(0)
        },
      ),
    )
  })
})
