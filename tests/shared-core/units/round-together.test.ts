import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fraction, sumFractions } from '../../../shared-core/units/fraction.ts'
import { roundTogether } from '../../../shared-core/units/round-together.ts'
import { roundFraction } from '../../../shared-core/units/rounding.ts'

describe('roundTogether', () => {
  it('gives three thirds to the first line', () => {
    const third = fraction(1, 3)
    expect(roundTogether([third, third, third], 'half-even')).toEqual({
      total: 1,
      parts: [1, 0, 0],
    })
  })

  it('gives what is left to the largest fraction', () => {
    const parts = [fraction(12, 10), fraction(27, 10), fraction(14, 10)]
    expect(roundTogether(parts, 'half-even')).toEqual({ total: 5, parts: [1, 3, 1] })
  })

  it('gives nothing for no parts', () => {
    expect(roundTogether([], 'half-even')).toEqual({ total: 0, parts: [] })
  })

  it('sums to the once-rounded total, leaves whole parts alone and moves no part by a unit', () => {
    const part = fc
      .tuple(fc.integer({ min: -100_000, max: 100_000 }), fc.integer({ min: 1, max: 97 }))
      .map(([n, d]) => fraction(n, d))
    fc.assert(
      fc.property(fc.array(part, { maxLength: 20 }), (exact) => {
        const { total, parts } = roundTogether(exact, 'half-even')
        expect(total).toBe(roundFraction(sumFractions(exact), 'half-even'))
        expect(parts.reduce((a, b) => a + b, 0)).toBe(total)
        for (const [at, { numerator, denominator }] of exact.entries()) {
          const difference = Math.abs((parts[at] ?? 0) - Number(numerator) / Number(denominator))
          expect(difference).toBeLessThan(1)
          if (denominator === 1n) expect(parts[at]).toBe(Number(numerator))
        }
      }),
    )
  })
})
