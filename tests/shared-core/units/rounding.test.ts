import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fraction, fractionToNumber } from '../../../shared-core/units/fraction.ts'
import {
  ceilFraction,
  floorFraction,
  type RoundingMode,
  roundDecimal,
  roundFraction,
  roundHalfAway,
  roundHalfEven,
} from '../../../shared-core/units/rounding.ts'
import vectors from '../../fixtures/vectors/rounding.json' with { type: 'json' }

const MODES: readonly RoundingMode[] = ['half-even', 'half-away', 'down', 'up']

describe('roundHalfEven and roundHalfAway', () => {
  it.each(vectors)('$id rounds as the vector says', ({ inputs, expected }) => {
    expect(roundHalfEven(inputs.value, inputs.decimals)).toBe(expected.half_even)
    expect(roundHalfAway(inputs.value, inputs.decimals)).toBe(expected.half_away)
  })

  it('gives a plain zero where a small negative value is rounded away', () => {
    expect(roundHalfEven('-0.004', 2)).toBe('0.00')
  })

  it('keeps a tie that binary fractions lose', () => {
    expect((1.005).toFixed(2)).toBe('1.00')
    expect(roundDecimal('1.005', 2, 'half-away')).toBe('1.01')
  })
})

describe('roundFraction', () => {
  it.each([
    [5, 2, 2, 3, 2, 3],
    [7, 2, 4, 4, 3, 4],
    [-5, 2, -2, -3, -2, -3],
    [7, 3, 2, 2, 2, 3],
    [-7, 3, -2, -2, -2, -3],
    [1, 2, 0, 1, 0, 1],
    [-1, 2, 0, -1, 0, -1],
    [6, 3, 2, 2, 2, 2],
  ])('%i/%i is %i half-even, %i half-away, %i down, %i up', (n, d, even, away, down, up) => {
    const rounded = MODES.map((mode) => roundFraction(fraction(n, d), mode))
    expect(rounded).toEqual([even, away, down, up])
  })

  it('agrees with the decimal rounding on every decimal', () => {
    fc.assert(
      fc.property(fc.integer(), fc.constantFrom(...MODES), (thousandths, mode) => {
        const sign = thousandths < 0 ? '-' : ''
        const digits = String(Math.abs(thousandths)).padStart(4, '0')
        const text = `${sign}${digits.slice(0, -3)}.${digits.slice(-3)}`
        expect(String(roundFraction(fraction(thousandths, 1000), mode))).toBe(
          roundDecimal(text, 0, mode),
        )
      }),
    )
  })

  it('stays within a unit, within half a unit to the nearest, and mirrors at zero', () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 1, max: 10_000 }), (n, d) => {
        const value = fraction(n, d)
        for (const mode of MODES) {
          const rounded = roundFraction(value, mode)
          const limit = mode.startsWith('half') ? 0.5 : 1
          expect(Math.abs(rounded - fractionToNumber(value))).toBeLessThanOrEqual(limit + 1e-9)
          expect(roundFraction(fraction(-n, d), mode)).toBe(-rounded || 0)
        }
        expect(floorFraction(value)).toBe(Math.floor(n / d))
        expect(ceilFraction(value)).toBe(Math.ceil(n / d) || 0)
      }),
    )
  })

  it('is monotone', () => {
    fc.assert(
      fc.property(fc.integer(), fc.nat(), fc.constantFrom(...MODES), (n, more, mode) => {
        const lower = roundFraction(fraction(n, 7), mode)
        expect(roundFraction(fraction(n + more, 7), mode)).toBeGreaterThanOrEqual(lower)
      }),
    )
  })

  it('throws beyond the safe integers', () => {
    expect(() => roundFraction(fraction(2n ** 60n), 'down')).toThrow('too large')
  })
})
