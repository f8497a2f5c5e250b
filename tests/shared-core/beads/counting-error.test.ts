import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { poolWeighings } from '../../../shared-core/beads/calibration.ts'
import {
  beadsToCount,
  countRelativeSd,
  exactBeadsToCount,
  roundingOf,
  Z95,
} from '../../../shared-core/beads/counting-error.ts'
import { exactly } from '../../../shared-core/units/spread.ts'
import { countingVectors, number } from './counting-vectors.ts'
import { weighing } from './some-weighings.ts'

/** erf to 1.5e-7. Abramowitz and Stegun 7.1.26. */
function erf(x: number): number {
  const t = 1 / (1 + 0.3275911 * x)
  const series = [0.254829592, -0.284496736, 1.421413741, -1.453152027, 1.061405429]
  return 1 - series.reduceRight((sum, term) => (sum + term) * t, 0) * Math.exp(-x * x)
}

describe('countRelativeSd', () => {
  it.each(countingVectors('count-sd'))(
    '$id is the published sd, uniform and at its worst',
    (vector) => {
      const { cv, n_ref, N, resolution_g, piece_g } = vector.inputs
      const count = {
        cv: number(cv),
        reference: number(n_ref),
        lot: number(N),
        digitMg: number(resolution_g) * 1000,
        beadMg: number(piece_g) * 1000,
      }
      const sd = countRelativeSd({ ...count, rounding: 'uniform' })
      expect(sd).toBeCloseTo(number(vector.expected['rel_sd']), 7)
      expect(countRelativeSd({ ...count, rounding: 'half-digit' })).toBeCloseTo(
        number(vector.expected['rel_sd_worst_case_rounding']),
        7,
      )
      expect(Z95 * sd * count.lot).toBeCloseTo(number(vector.expected['ci95_half_width_pieces']), 3)
      const exact = erf(0.5 / (sd * count.lot) / Math.SQRT2)
      expect(exact).toBeCloseTo(number(vector.expected['prob_exact']), 5)
    },
  )
})

describe('roundingOf', () => {
  it('takes half a digit where 50 small beads sit on a coarse digit', () => {
    const weighed = { beads: 50, beadMg: 4.5, cv: 0.05 }
    expect(roundingOf({ ...weighed, digitMg: 10 })).toBe('half-digit')
    expect(roundingOf({ ...weighed, digitMg: 1 })).toBe('uniform')
  })

  it.each(countingVectors('count-digit-error'))(
    '$id: half a digit of the sample is the worst error',
    (vector) => {
      const { resolution_g, piece_g } = vector.inputs
      for (const [index, beads] of (vector.inputs.n ?? []).entries()) {
        const worst = number(resolution_g) / 2 / (beads * number(piece_g))
        const sample = weighing(beads, Math.round(beads * number(piece_g) * 1000))
        const pooled = poolWeighings([sample], 0)
        expect(worst).toBeCloseTo(number(vector.expected.worst_rel?.[index]), 6)
        expect(pooled?.halfDigit).toBe(true)
        // 95 % of an error whose sd is half a digit, relative to the lighter bead.
        const { value, low } = pooled?.beadsPerGram ?? exactly(0)
        expect(value / low - 1).toBeCloseTo(Z95 * worst, 3)
      }
    },
  )
})

describe('beadsToCount', () => {
  it.each(countingVectors('count-n'))('$id is the published number', ({ inputs, expected }) => {
    const aim = {
      cv: number(inputs['cv']),
      accuracy: number(inputs['accuracy']),
      z: number(inputs['z']),
      digitMg: number(inputs['resolution_g']) * 1000,
      beadMg: number(inputs['piece_g']) * 1000,
    }
    expect(exactBeadsToCount(aim)).toBeCloseTo(number(expected['n_exact']), 3)
    expect(beadsToCount(aim)).toBe(expected['n'])
  })

  it('reaches the accuracy it was asked for, even on a coarse scale', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.15, noNaN: true }),
        fc.double({ min: 0.003, max: 0.1, noNaN: true }),
        fc.constantFrom(1, 10, 100),
        fc.double({ min: 2, max: 100, noNaN: true }),
        (cv, accuracy, digitMg, beadMg) => {
          const reference = beadsToCount({ cv, accuracy, digitMg, beadMg })
          const rounding = roundingOf({ beads: reference, beadMg, cv, digitMg })
          const sd = countRelativeSd({ cv, reference, lot: 1e12, digitMg, beadMg, rounding })
          expect(Z95 * sd).toBeLessThanOrEqual(accuracy * (1 + 1e-6))
        },
      ),
      // Ten thousand beads smear this scale's digit, but for the last place of a binary fraction.
      { examples: [[0.1499999999999924, 0.004079990386794785, 100, 2.0000000000000013]] },
    )
  })
})
