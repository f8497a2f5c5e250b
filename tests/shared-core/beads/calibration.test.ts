import { readFileSync } from 'node:fs'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { findForm, referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import {
  bestCalibration,
  type Calibration,
  poolWeighings,
  tableCalibration,
} from '../../../shared-core/beads/calibration.ts'
import {
  beadsToCount,
  countRelativeSd,
  exactBeadsToCount,
  roundingOf,
  Z95,
} from '../../../shared-core/beads/counting-error.ts'
import {
  beadsToHave,
  countOfMass,
  countOfWeighing,
  massOfCount,
  needMass,
} from '../../../shared-core/beads/grams-and-counts.ts'
import { threadMass, threadTex } from '../../../shared-core/beads/thread-mass.ts'
import { threads } from '../../../shared-core/beads/threads.ts'
import { checkWeighing, type Weighing } from '../../../shared-core/beads/weighing.ts'
import { massMg } from '../../../shared-core/units/mass.ts'
import { estimated, exactly, measured, type Spread } from '../../../shared-core/units/spread.ts'

type Vector = {
  id: string
  tolerance: number
  inputs: Record<string, number> & { n?: number[] }
  expected: Record<string, number> & { worst_rel?: number[] }
}
const vectors = JSON.parse(
  readFileSync(new URL('../../fixtures/vectors/count_by_weight.json', import.meta.url), 'utf8'),
) as Vector[]
const of = (stem: string) => vectors.filter(({ id }) => id.startsWith(stem))
const number = (value: number | undefined) => value ?? Number.NaN

const cylinder = findForm(referenceTables, 'cylinder-11/0')
if (cylinder === undefined) throw new Error('the reference tables have lost their cylinder')

const weighing = (beads: number, gross: number, tare = 0, digitMg = 10): Weighing => ({
  beads,
  grossMg: massMg(gross),
  tareMg: massMg(tare),
  digitMg,
})
const calibration = (low: number, value: number, high: number): Calibration => ({
  beadsPerGram: measured(low, value, high),
  cv: 0.04,
})
const inOrder = ({ low, value, high }: Spread) => low <= value && value <= high

/** erf to 1.5e-7. Abramowitz and Stegun 7.1.26. */
function erf(x: number): number {
  const t = 1 / (1 + 0.3275911 * x)
  const series = [0.254829592, -0.284496736, 1.421413741, -1.453152027, 1.061405429]
  return 1 - series.reduceRight((sum, term) => (sum + term) * t, 0) * Math.exp(-x * x)
}

describe('countRelativeSd', () => {
  it.each(of('count-sd'))('$id is the published sd, uniform and at its worst', (vector) => {
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
  })
})

describe('roundingOf', () => {
  it('takes half a digit where 50 small beads sit on a coarse digit', () => {
    const weighed = { beads: 50, beadMg: 4.5, cv: 0.05 }
    expect(roundingOf({ ...weighed, digitMg: 10 })).toBe('half-digit')
    expect(roundingOf({ ...weighed, digitMg: 1 })).toBe('uniform')
  })

  it.each(of('count-digit-error'))(
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
  it.each(of('count-n'))('$id is the published number', ({ inputs, expected }) => {
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
    )
  })
})

describe('poolWeighings', () => {
  it('is total beads over total grams', () => {
    const pooled = poolWeighings([weighing(100, 5510, 5000), weighing(200, 990)], 0.04)
    expect(pooled?.beadsPerGram.value).toBeCloseTo(200, 9)
    expect(pooled).toMatchObject({ beads: 300, weighings: 2, beadsPerGram: { basis: 'measured' } })
  })

  it('gives nothing without weighings', () => {
    expect(poolWeighings([], 0.04)).toBeUndefined()
  })

  it.each(of('count-and-clips'))(
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

  it.each(of('count-one-piece'))('$id: a sample 3 %% heavy counts 2.9 %% too few', (vector) => {
    const heavy = 1000 * (1 + number(vector.inputs['sample_bias']))
    const pooled = poolWeighings([weighing(1, heavy)], 0.03)
    expect(number(pooled?.beadsPerGram.value) - 1).toBeCloseTo(
      number(vector.expected['count_error_exact']),
      6,
    )
  })

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

describe('checkWeighing', () => {
  it.each([
    { what: 'no beads', weighed: weighing(0, 500), code: 'weighing-no-beads' },
    { what: 'half a bead', weighed: weighing(1.5, 500), code: 'weighing-no-beads' },
    {
      what: 'tare above gross',
      weighed: weighing(100, 500, 600),
      code: 'weighing-tare-over-gross',
    },
    { what: 'no net weight', weighed: weighing(100, 500, 500), code: 'weighing-no-weight' },
    { what: 'a digit below nothing', weighed: weighing(100, 500, 0, -1), code: 'weighing-digit' },
    { what: 'a forgotten tare', weighed: weighing(100, 5500), code: 'weighing-implausible' },
    { what: 'a slipped decimal', weighed: weighing(100, 50), code: 'weighing-implausible' },
  ])('refuses $what', ({ weighed, code }) => {
    expect(checkWeighing(weighed, cylinder)).toMatchObject({ ok: false, error: { code } })
  })

  it('keeps an honest weighing, and ten beads on a coarse scale', () => {
    expect(checkWeighing(weighing(100, 5500, 5000), cylinder).ok).toBe(true)
    expect(checkWeighing(weighing(10, 50, 0, 10), cylinder).ok).toBe(true)
  })
})

describe('massOfCount and countOfMass', () => {
  it('weigh 1,000 cylinders at 200 a gram as 5 g', () => {
    expect(massOfCount(1000, calibration(198, 200, 202))).toMatchObject({
      value: 5000,
      basis: 'measured',
    })
    expect(countOfMass(5000, calibration(198, 200, 202)).value).toBe(1000)
  })

  it('give back the count, and keep its truth in their ranges', () => {
    const anyCalibration = fc
      .tuple(
        fc.double({ min: 5, max: 400, noNaN: true }),
        fc.double({ min: 0.001, max: 0.3, noNaN: true }),
      )
      .map(([value, by]) => calibration(value * (1 - by), value, value * (1 + by)))
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), anyCalibration, (count, known) => {
        const mass = massOfCount(count, known)
        const again = countOfMass(mass.value, known)
        const step = known.beadsPerGram.value / 1000 / 2
        expect([mass, again].every(inOrder)).toBe(true)
        expect(Math.abs(again.value - count)).toBeLessThanOrEqual(Math.ceil(step))
        expect(again.low).toBeLessThanOrEqual(count)
        expect(again.high).toBeGreaterThanOrEqual(count - Math.ceil(step))
      }),
    )
  })

  it('refuse what is no count or no mass', () => {
    expect(() => massOfCount(0.5, calibration(198, 200, 202))).toThrow(RangeError)
    expect(() => countOfMass(-1, calibration(198, 200, 202))).toThrow(RangeError)
  })
})

describe('countOfWeighing', () => {
  it('subtracts the tare and counts what is left', () => {
    const lot = { grossMg: massMg(12_500), tareMg: massMg(7_500), digitMg: 10 }
    const count = countOfWeighing(lot, calibration(198, 200, 202))
    expect(count).toMatchObject({ ok: true, value: { value: 1000, basis: 'measured' } })
    expect(count.ok && count.value.low).toBeGreaterThan(980)
    expect(count.ok && count.value.high).toBeLessThan(1020)
  })

  it('is never surer on a coarser scale', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 100, max: 50_000 }),
        fc.integer({ min: 1, max: 100 }),
        (net, digit) => {
          const known = calibration(198, 200, 202)
          const lot = { grossMg: massMg(net), tareMg: massMg(0) }
          const fine = countOfWeighing({ ...lot, digitMg: digit }, known)
          const coarse = countOfWeighing({ ...lot, digitMg: digit * 10 }, known)
          if (!fine.ok || !coarse.ok) throw new Error('expected counts')
          expect(coarse.value.high).toBeGreaterThanOrEqual(fine.value.high)
          expect(coarse.value.low).toBeLessThanOrEqual(fine.value.low)
        },
      ),
    )
  })

  it('allows an empty reading the beads the scale cannot show', () => {
    const lot = { grossMg: massMg(7_500), tareMg: massMg(7_500), digitMg: 10 }
    const count = countOfWeighing(lot, calibration(198, 200, 202))
    expect(count).toMatchObject({ ok: true, value: { value: 0, low: 0 } })
    expect(count.ok && count.value.high).toBeGreaterThan(0)
  })

  it('refuses a tare above the gross weight', () => {
    const lot = { grossMg: massMg(1), tareMg: massMg(2), digitMg: 10 }
    expect(countOfWeighing(lot, calibration(198, 200, 202))).toMatchObject({
      ok: false,
      error: { code: 'weighing-tare-over-gross' },
    })
  })
})

describe('needMass', () => {
  it.each([
    { count: 98, cull: 0.02, spare: 0, beads: 100 },
    { count: 99, cull: 0.02, spare: 0, beads: 102 },
    { count: 441, cull: 0.02, spare: 0.1, beads: 500 },
    { count: 0, cull: 0.1, spare: 0.1, beads: 0 },
  ])('asks for $beads beads to have $count good ones', ({ count, cull, spare, beads }) => {
    expect(beadsToHave(count, cull, spare)).toBe(beads)
  })

  it('rounds the beads up, then the milligrams up', () => {
    const need = needMass(99, calibration(198, 200, 202), estimated(0.01, 0.02, 0.03))
    expect(need).toMatchObject({ value: 510, basis: 'estimated' })
    expect(inOrder(need)).toBe(true)
  })

  it('always leaves the good beads that are needed, with no bead to spare', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1e6 }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (count, cull) => {
          const beads = beadsToHave(count, cull)
          expect(beads * (1 - cull)).toBeGreaterThanOrEqual(count - 1e-6)
          expect((beads - 1) * (1 - cull)).toBeLessThan(count + 1e-6)
        },
      ),
    )
  })
})

describe('threadMass', () => {
  it('weighs 1000 m of 6 lb braid at 22 g, from its tex and from its section', () => {
    const braid = threads.find(({ id }) => id === 'braided-6lb')
    if (braid === undefined) throw new Error('the reference tables have lost their braid')
    const { tex: _, ...untold } = braid
    expect(threadMass(braid, 1_000_000).value).toBe(22_000)
    expect(threadTex(untold).value).toBeCloseTo(22, 1)
    expect(inOrder(threadMass(untold, measured(900, 1000, 1100)))).toBe(true)
  })
})
