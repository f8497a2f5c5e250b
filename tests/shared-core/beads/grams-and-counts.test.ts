import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Calibration } from '../../../shared-core/beads/calibration.ts'
import {
  beadsToHave,
  countOfMass,
  countOfWeighing,
  massOfCount,
  needMass,
} from '../../../shared-core/beads/grams-and-counts.ts'
import { massMg } from '../../../shared-core/units/mass.ts'
import { estimated, measured } from '../../../shared-core/units/spread.ts'
import { inOrder } from './in-order.ts'

const calibration = (low: number, value: number, high: number): Calibration => ({
  beadsPerGram: measured(low, value, high),
  cv: 0.04,
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
