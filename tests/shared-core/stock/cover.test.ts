import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type Cover,
  type CoverLine,
  type CoverRequest,
  coverOrders,
  type LineCover,
} from '../../../shared-core/stock/cover.ts'
import type { Lot } from '../../../shared-core/stock/lot.ts'
import type { MaterialNeed } from '../../../shared-core/stock/material-need.ts'
import type { PackOffer } from '../../../shared-core/stock/purchase.ts'
import { calendarDate } from '../../../shared-core/units/calendar-date.ts'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { money } from '../../../shared-core/units/money.ts'
import { generateWorkshop } from '../../fixtures/workshop-generator.ts'
import { fitsByTrying } from './brute-packing.ts'

const shows = (materialId: string, quantity: number): MaterialNeed => ({
  materialId,
  unit: 'mg',
  lotsMatter: true,
  quantity,
})
const pooled = (materialId: string, quantity: number): MaterialNeed => ({
  materialId,
  unit: 'piece',
  lotsMatter: false,
  quantity,
})
const lot = (lotId: string, materialId: string, onHand: number): Lot => ({
  lotId,
  materialId,
  onHand,
})
const line = (lineId: string, units: number, needs: readonly MaterialNeed[]): CoverLine => ({
  lineId,
  dueOn: calendarDate('2026-03-14'),
  entry: Number(lineId.replace(/\D/g, '')),
  units,
  needs,
})

function only(request: Partial<CoverRequest> & Pick<CoverRequest, 'lines' | 'lots'>): LineCover {
  const covered = coverOrders(request).lines
  expect(covered).toHaveLength(1)
  return covered[0] as LineCover
}

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

const materials = ['red', 'blue'] as const
const orders = fc.array(
  fc.record({
    red: fc.integer({ min: 0, max: 9 }),
    blue: fc.integer({ min: 0, max: 9 }),
    units: fc.integer({ min: 0, max: 3 }),
  }),
  { minLength: 1, maxLength: 3 },
)
const rooms = fc.array(fc.integer({ min: 0, max: 14 }), { maxLength: 3 })
const scene = fc.record({
  orders,
  red: rooms,
  blue: rooms,
  redShows: fc.boolean(),
  hold: fc.constantFrom('promise' as const, 'makeable' as const),
})
type Scene = typeof scene extends fc.Arbitrary<infer T> ? T : never

function toRequest(s: Scene): CoverRequest {
  return {
    hold: s.hold,
    lots: materials.flatMap((id) => s[id].map((onHand, i) => lot(`${id}${i}`, id, onHand))),
    lines: s.orders.map((order, i) =>
      line(
        `${i}`,
        order.units,
        materials
          .filter((id) => order[id] > 0)
          .map((id) => ({ ...shows(id, order[id]), lotsMatter: id === 'red' ? s.redShows : true })),
      ),
    ),
  }
}

/** The same by trying: does this many of each line fit this material? */
function holds(s: Scene, id: 'red' | 'blue', units: readonly number[]): boolean {
  const shares = s.orders.flatMap((order, i) =>
    order[id] > 0 ? Array<number>(units[i] ?? 0).fill(order[id]) : [],
  )
  const apart = id === 'blue' || s.redShows
  return fitsByTrying(apart ? s[id] : [s[id].reduce((a, b) => a + b, 0)], shares)
}

function lexicographic(s: Scene, fits: (units: readonly number[]) => boolean): number[] {
  const units: number[] = []
  for (const order of s.orders) {
    let most = 0
    while (most < order.units && fits([...units, most + 1])) most++
    units.push(most)
  }
  return units
}

describe('coverOrders against trying every arrangement', () => {
  it('gives the most units in order of promise when promises hold what they can make', () => {
    fc.assert(
      fc.property(scene, (drawn) => {
        const s: Scene = { ...drawn, hold: 'makeable' }
        const cover = coverOrders(toRequest(s))
        const expected = lexicographic(s, (units) => materials.every((id) => holds(s, id, units)))
        expect(cover.lines.map(({ units }) => units)).toEqual(expected)
        expect(cover.lines.every(({ proof }) => proof === 'exact')).toBe(true)
      }),
      { numRuns: 600 },
    )
  })

  it('gives each material its most units in order of promise when promises hold all they need', () => {
    fc.assert(
      fc.property(scene, (drawn) => {
        const s: Scene = { ...drawn, hold: 'promise', redShows: true }
        const cover = coverOrders(toRequest(s))
        for (const id of materials) {
          const expected = lexicographic(s, (units) => holds(s, id, units))
          cover.lines.forEach(({ limits, ordered }, i) => {
            const perUnit = s.orders[i]?.[id] ?? 0
            const limit = limits.find(({ materialId }) => materialId === id)
            const allowed = perUnit === 0 ? ordered : (expected[i] ?? 0)
            expect(limit?.units ?? ordered).toBe(allowed)
            expect(limit?.short ?? 0).toBe((ordered - allowed) * perUnit)
          })
        }
      }),
      { numRuns: 600 },
    )
  })

  it('draws whole units from lots, never more than a lot has, and all that is held', () => {
    fc.assert(
      fc.property(scene, (s) => {
        const request = toRequest(s)
        const cover = coverOrders(request)
        expectSoundDraws(cover, request)
      }),
      { numRuns: 600 },
    )
  })

  it('is fully covered once what is short has come in as one new lot of each material', () => {
    fc.assert(
      fc.property(scene, (drawn) => {
        const request = toRequest({ ...drawn, hold: 'promise' })
        const bought = coverOrders(request).shortages.map(({ materialId, short }) =>
          lot(`new ${materialId}`, materialId, short),
        )
        const after = coverOrders({ ...request, lots: [...request.lots, ...bought] })
        expect(after.lines.map(({ units }) => units)).toEqual(request.lines.map((l) => l.units))
        expect(after.shortages).toEqual([])
      }),
      { numRuns: 600 },
    )
  })
})

function expectSoundDraws(cover: Cover, request: CoverRequest): void {
  const used = new Map<string, number>()
  for (const { lineId, limits, units, ordered } of cover.lines) {
    const needs = request.lines.find((other) => other.lineId === lineId)?.needs ?? []
    const draws = cover.drawsOf(lineId)
    expect(draws.map(({ materialId }) => materialId)).toEqual(needs.map((n) => n.materialId))
    draws.forEach((own, i) => {
      const perUnit = needs[i]?.quantity ?? 0
      const limit = limits.find(({ materialId }) => materialId === own.materialId)
      const total = own.draws.reduce((sum, draw) => sum + draw.quantity, 0)
      const held =
        request.hold === 'promise' ? ordered * perUnit - (limit?.short ?? 0) : units * perUnit
      expect(total).toBe(held)
      for (const draw of own.draws) {
        used.set(draw.lotId, (used.get(draw.lotId) ?? 0) + draw.quantity)
        if (needs[i]?.lotsMatter) expect(draw.quantity).toBe((draw.units ?? -1) * perUnit)
      }
    })
  }
  const held = cover.heldByLot()
  for (const { lotId, onHand } of request.lots) {
    expect(held.get(lotId) ?? 0).toBe(used.get(lotId) ?? 0)
    expect(used.get(lotId) ?? 0).toBeLessThanOrEqual(onHand)
  }
}
