import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Charge, landedCosts } from '../../../shared-core/costing/landed-cost.ts'
import vectors from '../../fixtures/vectors/allocation.json' with { type: 'json' }

const anyLine = fc.record({
  costMinor: fc.integer({ min: 1, max: 100_000 }),
  massMg: fc.integer({ min: 1, max: 1_000_000 }),
})
const anyCharge: fc.Arbitrary<Charge> = fc.record({
  amountMinor: fc.nat(50_000),
  by: fc.constantFrom('value', 'weight'),
})

describe('landedCosts', () => {
  it.each(vectors.filter((vector) => vector.id.startsWith('lrm-freight')))(
    '$id shares the charge as published',
    ({ inputs, expected }) => {
      const byValue = inputs.weights.map((weight) => ({ costMinor: weight, massMg: 0 }))
      const byWeight = inputs.weights.map((weight) => ({ costMinor: 0, massMg: weight }))
      const shares = (lines: typeof byValue, by: Charge['by']) => {
        const landed = landedCosts(lines, [{ amountMinor: inputs.total, by }])
        return landed.ok ? landed.value.map((line) => line.sharesMinor[0]) : landed.error
      }
      expect(shares(byValue, 'value')).toEqual(expected.parts)
      expect(shares(byWeight, 'weight')).toEqual(expected.parts)
    },
  )

  it('adds freight of 60.00 by value to lines of 300.00 and 700.00', () => {
    const lines = [
      { costMinor: 30_000, massMg: 1 },
      { costMinor: 70_000, massMg: 99 },
    ]
    expect(landedCosts(lines, [{ amountMinor: 6000, by: 'value' }])).toEqual({
      ok: true,
      value: [
        { sharesMinor: [1800], landedMinor: 31_800 },
        { sharesMinor: [4200], landedMinor: 74_200 },
      ],
    })
  })

  it('refuses a charge that no line can be told its share of', () => {
    const free = [{ costMinor: 0, massMg: 100 }]
    expect(landedCosts(free, [{ amountMinor: 500, by: 'value' }])).toMatchObject({
      error: { code: 'nothing-to-share-by' },
    })
    expect(
      landedCosts([{ costMinor: 5, massMg: 0 }], [{ amountMinor: 5, by: 'weight' }]),
    ).toMatchObject({
      error: { code: 'nothing-to-share-by', next: expect.stringContaining('masses') },
    })
    expect(landedCosts(free, [{ amountMinor: 0, by: 'value' }])).toMatchObject({ ok: true })
  })

  it('takes a rebate, but none larger than the purchase', () => {
    const lines = [{ costMinor: 100, massMg: 1 }]
    expect(landedCosts(lines, [{ amountMinor: -30, by: 'value' }])).toMatchObject({
      value: [{ landedMinor: 70 }],
    })
    expect(landedCosts(lines, [{ amountMinor: -101, by: 'value' }])).toMatchObject({
      error: { code: 'rebate-too-large' },
    })
  })

  it('sums to the purchase and its charges, and never lowers a line by a charge', () => {
    fc.assert(
      fc.property(
        fc.array(anyLine, { minLength: 1, maxLength: 20 }),
        fc.array(anyCharge, { maxLength: 4 }),
        (lines, charges) => {
          const landed = landedCosts(lines, charges)
          if (!landed.ok) throw new Error(landed.error.message)
          const bought = lines.reduce((sum, line) => sum + line.costMinor, 0)
          const charged = charges.reduce((sum, charge) => sum + charge.amountMinor, 0)
          expect(landed.value.reduce((sum, line) => sum + line.landedMinor, 0)).toBe(
            bought + charged,
          )
          for (const [at, line] of landed.value.entries()) {
            expect(line.landedMinor).toBeGreaterThanOrEqual(lines[at]?.costMinor ?? 0)
          }
        },
      ),
    )
  })
})
