import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { costDifference } from '../../../shared-core/costing/cost-difference.ts'
import {
  type CostInput,
  costSheet,
  exactHourlyCost,
  exactMaterialCost,
  exactOverhead,
  type MaterialUse,
  type Overhead,
} from '../../../shared-core/costing/cost-sheet.ts'
import { durationS } from '../../../shared-core/units/duration.ts'
import { fractionToNumber, sumFractions } from '../../../shared-core/units/fraction.ts'
import { ratio, ratioFromPercent } from '../../../shared-core/units/ratio.ts'
import { roundFraction } from '../../../shared-core/units/rounding.ts'

const slate: MaterialUse = {
  key: 'slot:A',
  label: 'wet slate',
  group: 'materials',
  unit: 'mg',
  quantity: 2102,
  basis: 'measured',
  cost: { costMinor: 420, costQuantity: 7200 },
}
const thread: MaterialUse = {
  key: 'thread',
  label: 'Thread',
  group: 'thread',
  unit: 'mm',
  quantity: 4123,
  basis: 'estimated',
  cost: { costMinor: 1450, costQuantity: 114_000 },
}
const wires: MaterialUse = {
  key: 'extra:wires',
  label: 'ear wire, steel',
  group: 'findings',
  unit: 'piece',
  quantity: 2,
  basis: 'exact',
  cost: { costMinor: 640, costQuantity: 20 },
}
const card: MaterialUse = {
  key: 'extra:card',
  label: 'card, small, kraft',
  group: 'packaging',
  unit: 'piece',
  quantity: 1,
  basis: 'exact',
  cost: { costMinor: 900, costQuantity: 100 },
}
const pair: CostInput = {
  materials: [slate, thread, wires, card],
  labour: { seconds: durationS(5100), basis: 'measured' },
  hourlyRateMinor: 1800,
  overhead: { kind: 'percent-of-labour', percent: ratio('0.15') },
}

describe('costSheet', () => {
  it('costs a pair of Saltmarsh earrings line by line', () => {
    // By hand: 122.6166 + 52.4416 + 64 + 9 + 2550 + 382.5 = 3180.5583 cents.
    const sheet = costSheet(pair)
    expect(sheet.lines.map((line) => [line.key, line.amountMinor, line.basis])).toEqual([
      ['slot:A', 123, 'measured'],
      ['thread', 52, 'estimated'],
      ['extra:wires', 64, 'exact'],
      ['extra:card', 9, 'exact'],
      ['labour', 2550, 'measured'],
      ['overhead', 383, 'measured'],
    ])
    expect(sheet).toMatchObject({
      costMinor: 3181,
      byGroup: {
        materials: 123,
        thread: 52,
        findings: 64,
        packaging: 9,
        labour: 2550,
        overhead: 383,
      },
      basis: 'estimated',
      complete: true,
      benchSeconds: 5100,
    })
  })

  it('shares overhead by hour or by piece', () => {
    const overhead = (how: Overhead) => costSheet({ ...pair, overhead: how }).byGroup.overhead
    expect(overhead({ kind: 'per-hour', amountMinor: 240 })).toBe(340)
    expect(overhead({ kind: 'per-piece', amountMinor: 75 })).toBe(75)
  })

  it('says so where no cost is known', () => {
    const sheet = costSheet({ ...pair, materials: [{ ...slate, cost: null }] })
    expect(sheet.lines[0]).toMatchObject({ amountMinor: 0, known: false })
    expect(sheet.complete).toBe(false)
  })

  it('throws for figures no workshop has', () => {
    const broken: readonly CostInput[] = [
      { ...pair, materials: [{ ...slate, quantity: -1 }] },
      { ...pair, materials: [{ ...slate, quantity: 0.5 }] },
      { ...pair, materials: [{ ...slate, cost: { costMinor: 1, costQuantity: 0 } }] },
      { ...pair, hourlyRateMinor: -1 },
      { ...pair, overhead: { kind: 'percent-of-labour', percent: ratio('-0.1') } },
      { ...pair, overhead: { kind: 'per-piece', amountMinor: 0.5 } },
    ]
    for (const input of broken) expect(() => costSheet(input)).toThrow('Broken assumption')
  })
})

const anyUse = fc.record({
  label: fc.constant('bead'),
  group: fc.constantFrom<MaterialUse['group']>('materials', 'thread', 'findings', 'packaging'),
  unit: fc.constant('mg' as const),
  quantity: fc.nat(100_000),
  basis: fc.constantFrom<MaterialUse['basis']>('exact', 'measured', 'estimated'),
  cost: fc.option(
    fc.record({ costMinor: fc.nat(10_000), costQuantity: fc.integer({ min: 1, max: 250_000 }) }),
  ),
})
const anyOverhead: fc.Arbitrary<Overhead> = fc.oneof(
  fc.record({ kind: fc.constant('per-hour' as const), amountMinor: fc.nat(3000) }),
  fc.record({ kind: fc.constant('per-piece' as const), amountMinor: fc.nat(3000) }),
  fc.record({
    kind: fc.constant('percent-of-labour' as const),
    percent: fc.nat(100).map((percent) => ratioFromPercent(String(percent))),
  }),
)
const anyInput: fc.Arbitrary<CostInput> = fc.record({
  materials: fc
    .array(anyUse, { maxLength: 12 })
    .map((uses) => uses.map((use, at) => ({ ...use, key: `slot:${at}` }))),
  labour: fc.record({
    seconds: fc.nat(40_000).map(durationS),
    basis: fc.constantFrom<MaterialUse['basis']>('measured', 'estimated'),
  }),
  hourlyRateMinor: fc.nat(6000),
  overhead: anyOverhead,
})

describe('costSheet, whatever the figures', () => {
  it('has lines and groups that sum to the cost, which is the exact one rounded once', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const sheet = costSheet(input)
        const exact = [
          ...input.materials.map(exactMaterialCost),
          exactHourlyCost(input.labour.seconds, input.hourlyRateMinor),
          exactOverhead(input),
        ]
        expect(sheet.lines.reduce((sum, line) => sum + line.amountMinor, 0)).toBe(sheet.costMinor)
        expect(Object.values(sheet.byGroup).reduce((a, b) => a + b, 0)).toBe(sheet.costMinor)
        expect(sheet.costMinor).toBe(roundFraction(sumFractions(exact), 'half-even'))
        for (const [at, line] of sheet.lines.entries()) {
          const off = Math.abs(line.amountMinor - fractionToNumber(exact[at] ?? sumFractions([])))
          expect(off).toBeLessThan(1)
        }
      }),
    )
  })

  it('never gets cheaper by more material, a dearer lot, more time or a higher rate', () => {
    fc.assert(
      fc.property(anyInput, fc.integer({ min: 1, max: 5000 }), (input, more) => {
        const before = costSheet(input).costMinor
        const uses = (change: (use: MaterialUse) => MaterialUse): CostInput => ({
          ...input,
          materials: input.materials.map(change),
        })
        const dearer = ({ cost }: MaterialUse) =>
          cost && { ...cost, costMinor: cost.costMinor + more }
        const seconds = durationS(input.labour.seconds + more)
        const changed: readonly CostInput[] = [
          uses((use) => ({ ...use, quantity: use.quantity + more })),
          uses((use) => ({ ...use, cost: dearer(use) })),
          { ...input, labour: { ...input.labour, seconds } },
          { ...input, hourlyRateMinor: input.hourlyRateMinor + more },
        ]
        for (const one of changed) expect(costSheet(one).costMinor).toBeGreaterThanOrEqual(before)
      }),
    )
  })
})

describe('costDifference', () => {
  it('explains a difference by its causes', () => {
    const actual: CostInput = {
      ...pair,
      materials: [
        { ...slate, cost: { costMinor: 480, costQuantity: 7200 } },
        { ...thread, quantity: 5123 },
        wires,
        card,
      ],
      labour: { seconds: durationS(6000), basis: 'measured' },
      overhead: { kind: 'per-piece', amountMinor: 383 },
    }
    // By hand: thread 1000 mm x 1450/114000 = 12.72; slate 2102 x 60/7200 = 17.52; 900 s x 0.5 = 450;
    // overhead 0.5. Together 480.74, against totals of 3180.56 and 3661.29 that round to 480 apart.
    expect(costDifference(pair, actual)).toEqual({
      plannedMinor: 3181,
      actualMinor: 3661,
      differenceMinor: 480,
      causes: [
        { cause: 'dearer-or-cheaper', key: 'slot:A', label: 'wet slate', amountMinor: 18 },
        { cause: 'more-or-less-used', key: 'thread', label: 'Thread', amountMinor: 13 },
        { cause: 'time', key: 'labour', label: 'Labour', amountMinor: 450 },
        { cause: 'rounding', key: 'rounding', label: 'Rounding', amountMinor: -1 },
      ],
    })
  })

  it('finds nothing to explain between a cost and itself', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        expect(costDifference(input, input)).toMatchObject({ differenceMinor: 0, causes: [] })
      }),
    )
  })

  it('has causes that sum to the difference, of which rounding is at most one unit', () => {
    fc.assert(
      fc.property(anyInput, anyInput, (planned, actual) => {
        const found = costDifference(planned, actual)
        expect(found.differenceMinor).toBe(
          costSheet(actual).costMinor - costSheet(planned).costMinor,
        )
        const sum = found.causes.reduce((total, cause) => total + cause.amountMinor, 0)
        expect(sum).toBe(found.differenceMinor)
        const rounding = found.causes.find((cause) => cause.cause === 'rounding')?.amountMinor ?? 0
        expect(Math.abs(rounding)).toBeLessThanOrEqual(1)
      }),
    )
  })
})
