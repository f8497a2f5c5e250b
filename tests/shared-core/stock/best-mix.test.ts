import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bestMix, type MixDesign } from '../../../shared-core/stock/best-mix.ts'
import type { Lot } from '../../../shared-core/stock/lot.ts'
import { boundMix } from '../../../shared-core/stock/mix-bound.ts'
import { emptyPacking } from '../../../shared-core/stock/packing.ts'
import { unitsFrom } from '../../../shared-core/stock/units-from.ts'
import vectors from '../../fixtures/vectors/lots_no_mixing.json' with { type: 'json' }
import { fitsByTrying } from './brute-packing.ts'

type Amounts = Readonly<Record<string, number>>

function toLots(lots: Readonly<Record<string, readonly number[]>>): readonly Lot[] {
  return Object.entries(lots).flatMap(([materialId, rooms]) =>
    rooms.map((onHand, i) => ({ lotId: `${materialId}-${i}`, materialId, onHand })),
  )
}

function toDesign(designId: string, needs: Amounts, worth: number, maxUnits: number): MixDesign {
  return {
    designId,
    worth,
    maxUnits,
    needs: Object.entries(needs).map(([materialId, quantity]) => ({
      materialId,
      quantity,
      unit: 'mg',
      lotsMatter: true,
    })),
  }
}

type Instance = Readonly<{
  designs: Readonly<Record<string, Amounts>>
  lots: Readonly<Record<string, readonly number[]>>
  weight: Amounts
  max?: Amounts
}>

function mixOf({ designs, lots, weight, max }: Instance, worth: (id: string) => number) {
  expect(Object.keys(weight)).toEqual(Object.keys(designs))
  const list = Object.entries(designs).map(([id, needs]) =>
    toDesign(id, needs, worth(id), max?.[id] ?? 10_000),
  )
  return bestMix(list, toLots(lots))
}

describe('bestMix', () => {
  it.each(vectors.map((vector) => [vector.id, vector] as const))('%s', (_, vector) => {
    const inputs = vector.inputs as unknown as Instance
    const { expected } = vector
    const byWorth = mixOf(inputs, (id) => inputs.weight[id] ?? 0)
    expect(byWorth).toMatchObject({ worth: expected.best_value, proof: 'exact' })
    const made = Object.fromEntries(byWorth.units.map(({ designId, units }) => [designId, units]))
    if (expected.optimal_plans === 1) expect(made).toEqual(expected.one_optimal_plan)
    const byUnits = mixOf(inputs, () => 1)
    expect(byUnits).toMatchObject({ worth: expected.max_units, proof: 'exact' })
  })

  it.each(
    vectors
      .filter((vector) => vector.expected.sum_of_floors_single_design !== null)
      .map((vector) => [vector.id, vector] as const),
  )('%s as a single design by the closed formula', (_, vector) => {
    const inputs = vector.inputs as unknown as Instance
    const needs = Object.entries(Object.values(inputs.designs)[0] ?? {})
    const units = (lotsMatter: boolean) =>
      Math.min(...needs.map(([id, need]) => unitsFrom(inputs.lots[id] ?? [], need, lotsMatter)))
    expect(units(true)).toBe(vector.expected.sum_of_floors_single_design)
    expect(units(false)).toBe(vector.expected.ignoring_lots_single_design)
  })

  it('agrees with trying every mix in every arrangement', () => {
    const amounts = fc.record({
      red: fc.integer({ min: 0, max: 9 }),
      blue: fc.integer({ min: 0, max: 9 }),
    })
    const rooms = fc.array(fc.integer({ min: 0, max: 14 }), { maxLength: 3 })
    const design = fc.record({
      needs: amounts,
      worth: fc.integer({ min: 0, max: 9 }),
      maxUnits: fc.integer({ min: 0, max: 3 }),
    })
    fc.assert(
      fc.property(
        fc.array(design, { minLength: 1, maxLength: 3 }),
        fc.record({ red: rooms, blue: rooms }),
        (designs, lots) => {
          const list = designs.map(({ needs, worth, maxUnits }, d) =>
            toDesign(
              `D${d}`,
              Object.fromEntries(Object.entries(needs).filter(([, need]) => need > 0)),
              worth,
              maxUnits,
            ),
          )
          const mix = bestMix(list, toLots(lots))
          expect(mix).toMatchObject({ worth: bestByTrying(list, lots), proof: 'exact' })
          expect(mix.upperBound).toBe(mix.worth)
          const units = mix.units.map((entry) => entry.units)
          expect(mixFits(list, units, lots)).toBe(true)
          expect(worthOf(list, units)).toBe(mix.worth)
        },
      ),
      { numRuns: 500 },
    )
  })

  it('pools a material whose lots may be mixed', () => {
    const need = { materialId: 'cord', unit: 'mm', lotsMatter: false, quantity: 60 } as const
    const cord = [
      { lotId: 'a', materialId: 'cord', onHand: 50 },
      { lotId: 'b', materialId: 'cord', onHand: 70 },
    ]
    const design = { designId: 'strap', needs: [need], worth: 1, maxUnits: 9 }
    expect(bestMix([design], cord).worth).toBe(2)
    const apart = { ...design, needs: [{ ...need, lotsMatter: true }] }
    expect(bestMix([apart], cord).worth).toBe(1)
  })

  it('returns a mix that fits and a bound that holds when it is cut off', () => {
    const list = [7, 11, 13, 17, 19].map((size, d) =>
      toDesign(`D${d}`, { red: size }, size + (d % 2), 40),
    )
    const lots = { red: [97, 89, 83, 101, 79] }
    const cut = bestMix(list, toLots(lots), 3)
    const exact = bestMix(list, toLots(lots))
    expect(
      mixFits(
        list,
        cut.units.map((entry) => entry.units),
        lots,
        1,
      ),
    ).toBe(true)
    expect(cut.worth).toBeLessThanOrEqual(exact.upperBound)
    expect(cut.upperBound).toBeGreaterThanOrEqual(exact.worth)
  })
})

describe('boundMix', () => {
  it('is not below a mix of less worthy shares that fill the room better', () => {
    const list = [toDesign('A', { red: 6 }, 7, 9), toDesign('B', { red: 5 }, 5, 9)]
    expect(boundMix(list, new Map([['red', emptyPacking([10])]]))).toBeGreaterThanOrEqual(10)
  })

  it('is never below the best mix found by trying them all', () => {
    const design = fc.record({
      red: fc.integer({ min: 1, max: 9 }),
      worth: fc.integer({ min: 0, max: 9 }),
      maxUnits: fc.integer({ min: 0, max: 3 }),
    })
    const rooms = fc.array(fc.integer({ min: 0, max: 14 }), { minLength: 1, maxLength: 2 })
    fc.assert(
      fc.property(fc.array(design, { maxLength: 3 }), rooms, (designs, red) => {
        const list = designs.map((d, i) => toDesign(`D${i}`, { red: d.red }, d.worth, d.maxUnits))
        const bound = boundMix(list, new Map([['red', emptyPacking(red)]]))
        expect(bound).toBeGreaterThanOrEqual(bestByTrying(list, { red }))
      }),
      { numRuns: 500 },
    )
  })
})

type Rooms = Readonly<Record<string, readonly number[]>>

function worthOf(designs: readonly MixDesign[], units: readonly number[]): number {
  return designs.reduce((sum, design, d) => sum + design.worth * (units[d] ?? 0), 0)
}

function mixFits(
  designs: readonly MixDesign[],
  units: readonly number[],
  lots: Rooms,
  mode: 0 | 1 = 0,
): boolean {
  return Object.entries(lots).every(([materialId, rooms]) => {
    const shares = designs.flatMap((design, d) => {
      const need = design.needs.find((entry) => entry.materialId === materialId)
      return need ? Array<number>(units[d] ?? 0).fill(need.quantity) : []
    })
    // Large cases only compare totals: trying every arrangement of them would take for ever.
    if (mode === 1) return shares.reduce((a, b) => a + b, 0) <= rooms.reduce((a, b) => a + b, 0)
    return fitsByTrying(rooms, shares)
  })
}

function bestByTrying(designs: readonly MixDesign[], lots: Rooms): number {
  const mixes = designs.reduce<number[][]>(
    (all, { maxUnits }) =>
      all.flatMap((mix) => Array.from({ length: maxUnits + 1 }, (_, units) => [...mix, units])),
    [[]],
  )
  return Math.max(
    ...mixes.filter((mix) => mixFits(designs, mix, lots)).map((mix) => worthOf(designs, mix)),
  )
}
