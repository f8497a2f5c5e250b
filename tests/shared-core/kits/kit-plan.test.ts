import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { BillLine } from '../../../shared-core/design/bill.ts'
import { kitsFor, planKits, usualKitSpare } from '../../../shared-core/kits/kit-plan.ts'
import { planMake } from '../../../shared-core/stock/plan-make.ts'

const eelgrass: readonly BillLine[] = [
  {
    key: 'slot:A',
    kind: 'bead',
    name: 'Eelgrass',
    unit: 'mg',
    count: 412,
    quantity: 2102,
    low: 1980,
    high: 2230,
    basis: 'estimated',
    material: { materialId: 'eelgrass', unit: 'mg', lotsMatter: true },
  },
  {
    key: 'thread',
    kind: 'thread',
    name: 'Thread',
    unit: 'mm',
    quantity: 4001,
    low: 3800,
    high: 4200,
    basis: 'estimated',
  },
  {
    key: 'extra:wire',
    kind: 'finding',
    name: 'Ear wire',
    unit: 'piece',
    count: 2,
    quantity: 2,
    low: 2,
    high: 2,
    basis: 'exact',
  },
]

describe('planKits', () => {
  it('adds the spare to each kit and multiplies what is packed', () => {
    const plan = planKits(eelgrass, 12, usualKitSpare)
    expect(plan.bags).toEqual([
      {
        key: 'slot:A',
        slot: 'A',
        name: 'Eelgrass',
        materialId: 'eelgrass',
        unit: 'mg',
        quantity: 2418,
        count: 474,
      },
      { key: 'thread', name: 'Thread', unit: 'mm', quantity: 4602 },
      { key: 'extra:wire', name: 'Ear wire', unit: 'piece', quantity: 2, count: 2 },
    ])
    expect(plan.total.map((line) => line.quantity)).toEqual([29_016, 55_224, 24])
    expect(plan.total[0]?.count).toBe(5688)
  })

  it('packs each colour of a kit from one lot', () => {
    const plan = planKits(eelgrass.slice(0, 1), 3, usualKitSpare)
    const lots = [
      { lotId: 'first', materialId: 'eelgrass', onHand: 5000 },
      { lotId: 'second', materialId: 'eelgrass', onHand: 4000 },
    ]
    expect(planMake(plan.bill, lots, plan.kits)).toEqual({
      ok: true,
      value: [
        { materialId: 'eelgrass', lotId: 'first', quantity: -4836 },
        { materialId: 'eelgrass', lotId: 'second', quantity: -2418 },
      ],
    })
    const short = [{ lotId: 'first', materialId: 'eelgrass', onHand: 7253 }]
    expect(planMake(plan.bill, short, plan.kits)).toMatchObject({
      ok: false,
      error: { kind: 'short', units: 2, shortages: [{ short: 2418 }] },
    })
  })

  it('refuses kits and spares that are not whole', () => {
    expect(() => planKits(eelgrass, 0, usualKitSpare)).toThrow('kits')
    expect(() => planKits(eelgrass, 1, { beadsAndThreadPercent: 12.5, extrasPercent: 0 })).toThrow(
      'spare',
    )
  })

  it('never packs less than the bill, nor a whole unit more than the spare', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1_000_000 }),
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 0, max: 100 }),
        (quantity, kits, percent) => {
          const line = { ...eelgrass[1], quantity } as BillLine
          const spare = { beadsAndThreadPercent: percent, extrasPercent: 0 }
          const plan = planKits([line], kits, spare)
          const packed = plan.bags[0]?.quantity ?? 0
          expect(packed * 100).toBeGreaterThanOrEqual(quantity * (100 + percent))
          expect(packed * 100).toBeLessThan(quantity * (100 + percent) + 100)
          expect(plan.total[0]?.quantity).toBe(packed * kits)
        },
      ),
    )
  })
})

describe('kitsFor', () => {
  it('adds one spare kit for each ten students begun', () => {
    expect([0, 1, 10, 11, 12].map(kitsFor)).toEqual([0, 2, 11, 13, 14])
  })
})
