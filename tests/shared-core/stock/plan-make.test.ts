import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { BillLine } from '../../../shared-core/design/bill.ts'
import type { Lot } from '../../../shared-core/stock/lot.ts'
import { makeable } from '../../../shared-core/stock/makeable.ts'
import { onHandByLot } from '../../../shared-core/stock/movement.ts'
import { planMake } from '../../../shared-core/stock/plan-make.ts'
import { calendarDate } from '../../../shared-core/units/calendar-date.ts'

function billLine(materialId: string, quantity: number, lotsMatter: boolean): BillLine {
  return {
    key: `slot:${materialId}`,
    kind: 'bead',
    name: materialId,
    unit: 'mg',
    quantity,
    low: quantity,
    high: quantity,
    basis: 'exact',
    material: { materialId, unit: 'mg', lotsMatter },
  }
}
const { material: _, ...unassigned } = billLine('B', 10, true)

const lots: readonly Lot[] = [
  { lotId: 's1', materialId: 'slate', onHand: 3200, boughtOn: calendarDate('2025-05-01') },
  { lotId: 's2', materialId: 'slate', onHand: 9000, boughtOn: calendarDate('2025-01-01') },
  { lotId: 't2', materialId: 'spool', onHand: 4000, boughtOn: calendarDate('2025-02-01') },
  { lotId: 't1', materialId: 'spool', onHand: 1000, boughtOn: calendarDate('2025-01-01') },
]
const bill = [billLine('slate', 1500, true), billLine('spool', 600, false)]

describe('planMake', () => {
  it('keeps each unit in one lot where lots matter and empties the oldest elsewhere', () => {
    expect(planMake(bill, lots, 4)).toEqual({
      ok: true,
      value: [
        { materialId: 'slate', lotId: 's2', quantity: -3000 },
        { materialId: 'slate', lotId: 's1', quantity: -3000 },
        { materialId: 'spool', lotId: 't1', quantity: -1000 },
        { materialId: 'spool', lotId: 't2', quantity: -1400 },
      ],
    })
  })

  it('plans nothing when a material falls short, and says what is', () => {
    expect(planMake(bill, lots, 9)).toEqual({
      ok: false,
      error: {
        kind: 'short',
        units: 8,
        shortages: [
          { materialId: 'slate', short: 1500, units: 8 },
          { materialId: 'spool', short: 400, units: 8 },
        ],
      },
    })
  })

  it('plans nothing while a key has no material', () => {
    expect(planMake([...bill, unassigned], lots, 1)).toEqual({
      ok: false,
      error: { kind: 'unassigned', keys: ['slot:B'] },
    })
  })
})

describe('makeable', () => {
  it('gives the units stock allows and what limits them', () => {
    const made = makeable(
      [...bill, billLine('fog', 10, true)],
      [
        ...lots,
        { lotId: 'f', materialId: 'fog', onHand: 29 },
        { lotId: 'g', materialId: 'fog', onHand: -5 },
      ],
    )
    expect(made.units).toBe(2)
    expect(made.limits).toEqual([{ materialId: 'fog', perUnit: 10, available: 29, units: 2 }])
    expect(made.materials.map((material) => material.units)).toEqual([8, 8, 2])
  })

  it('is 0 with a key unassigned, and for an empty bill', () => {
    expect(makeable([...bill, unassigned], lots)).toMatchObject({
      units: 0,
      unassigned: ['slot:B'],
    })
    expect(makeable([], lots).units).toBe(0)
  })

  it('is the most that planMake can plan', () => {
    const room = fc.integer({ min: -5, max: 60 })
    fc.assert(
      fc.property(
        fc.array(room, { maxLength: 4 }),
        fc.array(room, { maxLength: 4 }),
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 1, max: 20 }),
        (slate, spool, a, b) => {
          const stock = [
            ...slate.map((onHand, i) => ({ lotId: `s${i}`, materialId: 'slate', onHand })),
            ...spool.map((onHand, i) => ({ lotId: `t${i}`, materialId: 'spool', onHand })),
          ]
          const unit = [billLine('slate', a, true), billLine('spool', b, false)]
          const { units } = makeable(unit, stock)
          const plan = planMake(unit, stock, units)
          if (!plan.ok) throw new Error('planMake refuses what makeable allows')
          expect(planMake(unit, stock, units + 1).ok).toBe(false)
          const left = onHandByLot([
            ...stock.map(({ onHand, ...lot }) => ({ ...lot, quantity: onHand })),
            ...plan.value,
          ])
          for (const { lotId, onHand } of stock) {
            const after = left.get(lotId) ?? 0
            expect(after).toBeGreaterThanOrEqual(Math.min(0, onHand))
            if (lotId.startsWith('s')) expect((onHand - after) % a).toBe(0)
          }
          expect(plan.value.reduce((sum, { quantity }) => sum - quantity, 0)).toBe(units * (a + b))
        },
      ),
    )
  })
})
