import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { availableLots } from '../../../shared-core/stock/available.ts'
import { drawCost, valueAtCost } from '../../../shared-core/stock/lot-value.ts'
import { onHandByLot, reversed } from '../../../shared-core/stock/movement.ts'
import { restockState } from '../../../shared-core/stock/restock.ts'
import { stocktake } from '../../../shared-core/stock/stocktake.ts'

const movement = fc.record({
  materialId: fc.constant('fog'),
  lotId: fc.constantFrom('a', 'b', 'c'),
  quantity: fc.integer({ min: -1_000_000, max: 1_000_000 }),
})

describe('onHandByLot', () => {
  it('sums the movements of each lot', () => {
    const at = (lotId: string, quantity: number) => ({ materialId: 'fog', lotId, quantity })
    expect([...onHandByLot([at('a', 5000), at('b', 700), at('a', -1200)])]).toEqual([
      ['a', 3800],
      ['b', 700],
    ])
  })

  it('comes to nothing with movements and their reverse together', () => {
    fc.assert(
      fc.property(fc.array(movement), (movements) => {
        const sums = onHandByLot([...movements, ...reversed(movements)])
        expect([...sums.values()].every((sum) => sum === 0)).toBe(true)
      }),
    )
  })

  it('throws rather than lose a milligram', () => {
    const huge = { materialId: 'fog', lotId: 'a', quantity: Number.MAX_SAFE_INTEGER }
    expect(() => onHandByLot([huge, huge])).toThrow(RangeError)
  })
})

describe('availableLots', () => {
  it('takes what is reserved from each lot, below 0 where more is held than is there', () => {
    const lots = [
      { lotId: 'a', materialId: 'fog', onHand: 5000 },
      { lotId: 'b', materialId: 'fog', onHand: 100 },
    ]
    const held = (lotId: string, quantity: number) => ({ materialId: 'fog', lotId, quantity })
    const available = availableLots(lots, [held('a', 1500), held('a', 800), held('b', 150)])
    expect(available.map((lot) => lot.onHand)).toEqual([2700, -50])
  })
})

describe('stocktake', () => {
  const lots = [
    { lotId: 'a', materialId: 'fog', onHand: 5200 },
    { lotId: 'b', materialId: 'fog', onHand: 700 },
    { lotId: 'c', materialId: 'wire', onHand: 12 },
  ]

  it('moves each counted lot to what was found and leaves the others', () => {
    const counted = [
      { lotId: 'a', quantity: 5150 },
      { lotId: 'c', quantity: 12 },
    ]
    expect(stocktake(lots, counted)).toEqual({
      ok: true,
      value: {
        lines: [
          { lotId: 'a', materialId: 'fog', books: 5200, found: 5150, difference: -50 },
          { lotId: 'c', materialId: 'wire', books: 12, found: 12, difference: 0 },
        ],
        movements: [{ materialId: 'fog', lotId: 'a', quantity: -50 }],
        notCounted: ['b'],
      },
    })
  })

  it.each([
    ['lot-unknown', [{ lotId: 'x', quantity: 1 }], 'counted.0'],
    [
      'lot-counted-twice',
      [
        { lotId: 'a', quantity: 1 },
        { lotId: 'a', quantity: 2 },
      ],
      'counted.1',
    ],
    ['count-not-whole', [{ lotId: 'a', quantity: 1.5 }], 'counted.0'],
    ['count-not-whole', [{ lotId: 'a', quantity: -1 }], 'counted.0'],
  ])('refuses %s and names the field', (code, counted, field) => {
    expect(stocktake(lots, counted)).toMatchObject({ ok: false, error: { code, field } })
  })

  it('makes the books agree with what was found', () => {
    fc.assert(
      fc.property(fc.array(movement), fc.integer({ min: 0, max: 10_000 }), (movements, found) => {
        const books = [...onHandByLot(movements)].map(([lotId, onHand]) => ({
          lotId,
          materialId: 'fog',
          onHand,
        }))
        const taken = stocktake(
          books,
          books.map(({ lotId }) => ({ lotId, quantity: found })),
        )
        if (!taken.ok) throw new Error(taken.error.message)
        const after = onHandByLot([...movements, ...taken.value.movements])
        expect([...after.values()].every((quantity) => quantity === found)).toBe(true)
      }),
    )
  })
})

describe('restockState', () => {
  const level = { onHand: 4000, promised: 0, reserved: 0, lowAt: 1000 }

  it.each([
    [{ promised: 2999 }, { kind: 'enough', left: 1001 }],
    [{ promised: 3000 }, { kind: 'low', left: 1000, by: 0 }],
    [{ promised: 3200 }, { kind: 'low', left: 800, by: 200 }],
    [{ promised: 3000, reserved: 1000 }, { kind: 'out' }],
    [{ promised: 4100 }, { kind: 'short', by: 100 }],
    [
      { promised: 3000, reserved: 1001 },
      { kind: 'short', by: 1 },
    ],
    [
      { promised: 4100, lowAt: null },
      { kind: 'short', by: 100 },
    ],
    [
      { promised: 4000, lowAt: null },
      { kind: 'enough', left: 0 },
    ],
    [{ onHand: 0 }, { kind: 'out' }],
    [{ onHand: -30 }, { kind: 'out' }],
  ] as const)('%j calls for %j', (change, state) => {
    expect(restockState({ ...level, ...change })).toEqual(state)
  })
})

describe('valueAtCost and drawCost', () => {
  it('rounds once, a tie to the even unit', () => {
    const tube = { costMinor: 420, costQuantity: 10_000 }
    expect(valueAtCost(tube, 7_300)).toBe(307) // 306.6
    expect(valueAtCost({ costMinor: 1, costQuantity: 2 }, 1)).toBe(0)
    expect(valueAtCost({ costMinor: 3, costQuantity: 2 }, 1)).toBe(2)
    expect(valueAtCost(tube, -7_300)).toBe(-307)
  })

  it('stays exact where the product leaves the safe integers', () => {
    const cost = { costMinor: 9_007_199_254_740, costQuantity: 1_000_000_007 }
    expect(valueAtCost(cost, 1_000_000_007)).toBe(9_007_199_254_740)
  })

  it('draws a lot of three for 1.00 as 33, 34 and 33', () => {
    const lot = { costMinor: 100, costQuantity: 3 }
    expect([0, 1, 2].map((before) => drawCost(lot, before, 1))).toEqual([33, 34, 33])
  })

  it('adds up to the cost of the lot however it is drawn', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 50_000 }), { minLength: 1, maxLength: 20 }),
        fc.integer({ min: 0, max: 1_000_000 }),
        (draws, costMinor) => {
          const costQuantity = draws.reduce((a, b) => a + b, 0)
          const lot = { costMinor, costQuantity }
          let before = 0
          let total = 0
          for (const draw of draws) {
            const cost = drawCost(lot, before, draw)
            expect(Math.abs(cost - valueAtCost(lot, draw))).toBeLessThanOrEqual(1)
            total += cost
            before += draw
          }
          expect(total).toBe(costMinor)
        },
      ),
    )
  })
})
