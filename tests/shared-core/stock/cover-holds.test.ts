import { describe, expect, it } from 'vitest'
import { coverOrders } from '../../../shared-core/stock/cover.ts'
import type { Lot } from '../../../shared-core/stock/lot.ts'
import { calendarDate } from '../../../shared-core/units/calendar-date.ts'
import { line, lot, pooled, shows } from './cover-lines.ts'
import { only } from './only-line.ts'

describe('coverOrders', () => {
  it('lets an earlier promise change lots so that a later one fits as well', () => {
    const lots = [lot('ten', 'fog', 10), lot('nine', 'fog', 9), lot('seven', 'fog', 7)]
    const lines = [line('1', 1, [shows('fog', 4)]), line('2', 2, [shows('fog', 6)])]
    const more = line('3', 2, [shows('fog', 4)])
    const cover = coverOrders({ lines: [...lines, more], lots })
    expect(cover.lines.map(({ units }) => units)).toEqual([1, 2, 2])
  })

  it('holds for an earlier promise what it can use, even while it waits for another material', () => {
    const lines = [
      line('1', 2, [pooled('clasp', 1), pooled('wire', 2)]),
      line('2', 2, [pooled('wire', 2)]),
    ]
    const lots = [lot('w', 'wire', 5)]
    const promised = coverOrders({ lines, lots })
    expect(promised.lines.map(({ units }) => units)).toEqual([0, 0])
    expect(promised.shortages).toEqual([
      { materialId: 'clasp', short: 2 },
      { materialId: 'wire', short: 3 },
    ])
    const now = coverOrders({ lines, lots, hold: 'makeable' })
    expect(now.lines.map(({ units }) => units)).toEqual([0, 2])
  })

  it('keeps reserved stock for its line, and other reserved stock from every line', () => {
    const needs = [shows('fog', 100), pooled('wire', 2)]
    const lots = [lot('f', 'fog', 1000), lot('g', 'fog', 250), lot('w', 'wire', 20)]
    const reservations = [
      { materialId: 'fog', lotId: 'f', quantity: 350, lineId: '2' },
      { materialId: 'fog', lotId: 'f', quantity: 400 },
      { materialId: 'wire', lotId: 'w', quantity: 6, lineId: '2' },
      { materialId: 'wire', lotId: 'w', quantity: 4 },
    ]
    const lines = [line('1', 9, needs), line('2', 3, needs)]
    const cover = coverOrders({ lines, lots, reservations })
    // Line 1: fog 1000 - 400 - 300 leaves 3 units and lot g gives 2; wire 20 - 10 gives 5.
    expect(cover.lines.map(({ units }) => units)).toEqual([5, 3])
    expect(cover.drawsOf('2')).toEqual([
      { materialId: 'fog', draws: [{ lotId: 'f', quantity: 300, units: 3 }] },
      { materialId: 'wire', draws: [{ lotId: 'w', quantity: 6 }] },
    ])
  })

  it('gives what a miscount left, when more is reserved than there is', () => {
    const reservations = [
      { materialId: 'wire', lotId: 'w', quantity: 9, lineId: '1' },
      { materialId: 'fog', lotId: 'f', quantity: 900, lineId: '1' },
      { materialId: 'fog', lotId: 'gone', quantity: 900, lineId: '1' },
    ]
    const needs = [pooled('wire', 2), shows('fog', 100)]
    const lots = [lot('w', 'wire', 3), lot('f', 'fog', -20), lot('g', 'fog', 150)]
    const cover = only({ lines: [line('1', 2, needs)], lots, reservations })
    expect(cover.limits.map(({ units, short }) => [units, short])).toEqual([
      [1, 1],
      [1, 100],
    ])
  })

  it('deals the oldest lots to the earliest promises', () => {
    const fog = (lotId: string, boughtOn: string): Lot => ({
      ...lot(lotId, 'fog', 30),
      boughtOn: calendarDate(boughtOn),
    })
    const lots = [fog('b', '2025-06-01'), fog('a', '2025-09-01'), lot('z', 'fog', 30)]
    const lines = [line('1', 4, [shows('fog', 10)]), line('2', 3, [shows('fog', 10)])]
    const cover = coverOrders({ lines, lots })
    expect(['1', '2'].map((lineId) => cover.drawsOf(lineId)[0]?.draws)).toEqual([
      [
        { lotId: 'z', quantity: 30, units: 3 },
        { lotId: 'b', quantity: 10, units: 1 },
      ],
      [
        { lotId: 'b', quantity: 20, units: 2 },
        { lotId: 'a', quantity: 10, units: 1 },
      ],
    ])
  })
})
