import { describe, expect, it } from 'vitest'
import { coverOrders } from '../../../shared-core/stock/cover.ts'
import type { Lot } from '../../../shared-core/stock/lot.ts'
import type { MaterialNeed } from '../../../shared-core/stock/material-need.ts'
import type { PackOffer } from '../../../shared-core/stock/purchase.ts'
import { calendarDate } from '../../../shared-core/units/calendar-date.ts'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { money } from '../../../shared-core/units/money.ts'
import { generateWorkshop } from '../../fixtures/workshop-generator.ts'
import { line, lot, pooled, shows } from './cover-lines.ts'
import { expectSoundDraws } from './expect-sound-draws.ts'
import { only } from './only-line.ts'

describe('coverOrders', () => {
  it('does not make two units of 5 g from three lots of 4 g', () => {
    const lots = [
      lot('a', 'samphire', 4000),
      lot('b', 'samphire', 4000),
      lot('c', 'samphire', 4000),
    ]
    const cover = only({ lines: [line('1', 2, [shows('samphire', 5000)])], lots })
    expect(cover).toMatchObject({ units: 0, ordered: 2, proof: 'exact' })
    expect(cover.limits[0]).toMatchObject({ units: 0, short: 10_000, onHand: 12_000 })
    const mixed = only({ lines: [line('1', 2, [pooled('samphire', 5000)])], lots })
    expect(mixed).toMatchObject({ units: 2, limits: [] })
  })

  it('names what limits, most binding first, and what is short to finish', () => {
    const needs = [shows('slate', 1500), pooled('wire', 2), shows('fog', 400)]
    const lots = [lot('s1', 'slate', 9000), lot('w1', 'wire', 7), lot('f1', 'fog', 1100)]
    const cover = only({ lines: [line('1', 10, needs)], lots })
    expect(cover.units).toBe(2)
    expect(cover.limits.map(({ materialId, units, short }) => [materialId, units, short])).toEqual([
      ['fog', 2, 3200],
      ['wire', 3, 13],
      ['slate', 6, 6000],
    ])
  })

  it('takes lines by due date, then by entry, whatever the order they come in', () => {
    const needs = [pooled('wire', 2)]
    const early = { ...line('3', 2, needs), dueOn: calendarDate('2026-03-10') }
    const lines = [line('2', 2, needs), line('1', 2, needs), early]
    const cover = coverOrders({ lines, lots: [lot('w', 'wire', 7)] })
    expect(cover.lines.map(({ lineId, units }) => [lineId, units])).toEqual([
      ['3', 2],
      ['1', 1],
      ['2', 0],
    ])
    expect(cover.lines[1]?.limits[0]).toMatchObject({ onHand: 7, heldByOthers: 4, short: 1 })
    expect(cover.shortages).toEqual([{ materialId: 'wire', short: 5 }])
  })

  it('makes nothing of a line with a key that has no material', () => {
    const lines = [{ ...line('1', 2, [pooled('wire', 2)]), unassigned: ['slot:B'] }]
    const cover = only({ lines, lots: [lot('w', 'wire', 50)] })
    expect(cover).toMatchObject({ units: 0, upperBound: 0, unassigned: ['slot:B'], limits: [] })
  })

  it('covers a line without needs, and one of no units', () => {
    expect(only({ lines: [line('1', 3, [])], lots: [] })).toMatchObject({ units: 3 })
    const none = only({ lines: [line('1', 0, [shows('fog', 5)])], lots: [] })
    expect(none).toMatchObject({ units: 0, limits: [], proof: 'exact' })
  })

  it('prices what is short by the cheapest single offer, alone and over all lines', () => {
    const eur = currencyCode('EUR')
    const offer = (offerId: string, packQuantity: number, minor: number): PackOffer => ({
      offerId,
      supplierId: 'marlow',
      materialId: 'fog',
      packQuantity,
      price: money(minor, eur),
    })
    const offers = [offer('tube', 7_500, 420), offer('bag', 50_000, 1_900)]
    const lines = ['1', '2', '3', '4', '5'].map((id) => line(id, 10, [shows('fog', 1_000)]))
    const cover = coverOrders({ lines, lots: [lot('f', 'fog', 5_500)], offers })
    expect(cover.lines[0]?.limits[0]?.purchase).toEqual({
      offerId: 'tube',
      packs: 1,
      cost: money(420, eur),
      leftOver: 2_500,
    })
    expect(cover.shortages).toEqual([
      {
        materialId: 'fog',
        short: 45_000,
        purchase: { offerId: 'bag', packs: 1, cost: money(1_900, eur), leftOver: 5_000 },
      },
    ])
  })

  it('says how much it may err when the search is cut off', () => {
    const lots = [97, 101, 103, 89, 107, 83].map((room, i) => lot(`f${i}`, 'fog', room))
    const sizes = [31, 23, 19, 17] as const
    const lines = sizes.map((size, i) => line(`${i}`, [5, 6, 5, 20][i] ?? 0, [shows('fog', size)]))
    const cut = coverOrders({ lines, lots, nodeBudget: 2 }).lines[3]
    const exact = coverOrders({ lines, lots }).lines[3]
    expect(cut).toMatchObject({ units: 9, upperBound: 11, proof: 'bounded' })
    expect(exact).toMatchObject({ units: 11, upperBound: 11, proof: 'exact' })
  })

  it('covers a whole workshop soundly, the same each time', () => {
    const small = { materials: 60, designs: 20, orders: 120, seed: 7, stockShare: 0.8 }
    const workshop = generateWorkshop(small)
    expect(generateWorkshop(small)).toEqual(workshop)
    for (const hold of ['promise', 'makeable'] as const) {
      const request = { ...workshop, reservations: [], hold }
      const cover = coverOrders(request)
      expectSoundDraws(cover, request)
      expect(cover.lines.some(({ units, ordered }) => units > 0 && units < ordered)).toBe(true)
      expect(coverOrders({ ...request, lines: request.lines.toReversed() }).lines).toEqual(
        cover.lines,
      )
    }
  })

  it('throws for needs that are not whole, not above 0, doubled or of two minds about lots', () => {
    const lots: readonly Lot[] = []
    const run =
      (...needs: MaterialNeed[]) =>
      () =>
        coverOrders({ lines: [line('1', 1, needs)], lots })
    expect(run(pooled('wire', 0))).toThrow('above 0')
    expect(run(pooled('wire', 1.5))).toThrow('above 0')
    expect(run(pooled('wire', 1), pooled('wire', 1))).toThrow('one need')
    expect(() =>
      coverOrders({ lines: [line('1', 1, [pooled('x', 1)]), line('2', 1, [shows('x', 1)])], lots }),
    ).toThrow('lots matter')
    expect(() => coverOrders({ lines: [line('1', 0.5, [])], lots })).toThrow('whole units')
  })
})
