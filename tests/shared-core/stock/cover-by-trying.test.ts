import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type CoverRequest, coverOrders } from '../../../shared-core/stock/cover.ts'
import { fitsByTrying } from './brute-packing.ts'
import { line, lot, shows } from './cover-lines.ts'
import { expectSoundDraws } from './expect-sound-draws.ts'

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
