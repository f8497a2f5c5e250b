import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  bestCalibration,
  poolWeighings,
  tableCalibration,
} from '../../../shared-core/beads/calibration.ts'
import { countOfMass } from '../../../shared-core/beads/grams-and-counts.ts'
import { exactly, type Spread } from '../../../shared-core/units/spread.ts'
import { countingVectors, number } from './counting-vectors.ts'
import { inOrder } from './in-order.ts'
import { cylinder, weighing } from './some-weighings.ts'

describe('poolWeighings', () => {
  it('is total beads over total grams', () => {
    const pooled = poolWeighings([weighing(100, 5510, 5000), weighing(200, 990)], 0.04)
    expect(pooled?.beadsPerGram.value).toBeCloseTo(200, 9)
    expect(pooled).toMatchObject({ beads: 300, weighings: 2, beadsPerGram: { basis: 'measured' } })
  })

  it('gives nothing without weighings', () => {
    expect(poolWeighings([], 0.04)).toBeUndefined()
  })

  it.each(countingVectors('count-and-clips'))(
    '$id: a light sample passes its error on to the count',
    (vector) => {
      const { reference_g, reference_n, total_g } = vector.inputs
      const sample = weighing(number(reference_n), number(reference_g) * 1000, 0, 1)
      const pooled = poolWeighings([sample], 0.02)
      if (pooled === undefined) throw new Error('expected a calibration')
      const perPiece = 1 / pooled.beadsPerGram.value
      expect(perPiece).toBeCloseTo(number(vector.expected['piece_g']), 9)
      expect(number(total_g) / perPiece).toBeCloseTo(number(vector.expected['count_raw']), 3)
      expect(countOfMass(number(total_g) * 1000, pooled).value).toBe(vector.expected['count'])
    },
  )

  it.each(countingVectors('count-one-piece'))(
    '$id: a sample 3 %% heavy counts 2.9 %% too few',
    (vector) => {
      const heavy = 1000 * (1 + number(vector.inputs['sample_bias']))
      const pooled = poolWeighings([weighing(1, heavy)], 0.03)
      expect(number(pooled?.beadsPerGram.value) - 1).toBeCloseTo(
        number(vector.expected['count_error_exact']),
        6,
      )
    },
  )

  it('widens its range and says so when weighings disagree', () => {
    const agreeing = poolWeighings([weighing(200, 1000), weighing(200, 1010)], 0.04)
    const disagreeing = poolWeighings([weighing(200, 900), weighing(200, 1110)], 0.04)
    const width = (spread: Spread) => spread.high - spread.low
    expect(agreeing?.disagree).toBe(false)
    expect(disagreeing?.disagree).toBe(true)
    expect(width(disagreeing?.beadsPerGram ?? exactly(0))).toBeGreaterThan(
      3 * width(agreeing?.beadsPerGram ?? exactly(0)),
    )
  })

  it('holds the true figure in its 95 % range about 95 times of a hundred', () => {
    // Beads drawn from an even spread of sd 4 %, weighed on a 0.01 g scale; a fixed generator.
    let state = 12345
    const random = () => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0
      return state / 2 ** 32
    }
    const trials = 2000
    let held = 0
    for (let trial = 0; trial < trials; trial++) {
      // Many sample sizes, so that true masses lie everywhere between two digits.
      const beads = 250 + (trial % 100)
      let mg = 0
      for (let bead = 0; bead < beads; bead++)
        mg += 4.93 * (1 + 0.04 * Math.sqrt(12) * (random() - 0.5))
      const pooled = poolWeighings([weighing(beads, Math.round(mg / 10) * 10)], 0.04)
      const { low, high } = pooled?.beadsPerGram ?? exactly(0)
      if (low <= 1000 / 4.93 && 1000 / 4.93 <= high) held += 1
    }
    expect(held / trials).toBeGreaterThan(0.93)
    expect(held / trials).toBeLessThan(0.98)
  })

  it('depends on neither the order nor the splitting into a single sum', () => {
    const anyWeighing = fc
      .tuple(fc.integer({ min: 20, max: 500 }), fc.double({ min: 4, max: 6, noNaN: true }))
      .map(([beads, mg]) => weighing(beads, Math.round(beads * mg)))
    fc.assert(
      fc.property(fc.array(anyWeighing, { minLength: 1, maxLength: 6 }), (weighings) => {
        const pooled = poolWeighings(weighings, 0.04)
        const reversed = poolWeighings(weighings.toReversed(), 0.04)
        expect(pooled && inOrder(pooled.beadsPerGram)).toBe(true)
        expect(reversed?.beadsPerGram.value).toBeCloseTo(number(pooled?.beadsPerGram.value), 9)
        expect(reversed?.beadsPerGram.low).toBeCloseTo(number(pooled?.beadsPerGram.low), 9)
      }),
    )
  })
})

describe('bestCalibration', () => {
  it("takes the workshop's own weighings over the table", () => {
    expect(bestCalibration(cylinder, [])).toEqual(tableCalibration(cylinder))
    expect(bestCalibration(cylinder, [weighing(200, 1030)]).beadsPerGram).toMatchObject({
      basis: 'measured',
      value: 200 / 1.03,
    })
  })
})
