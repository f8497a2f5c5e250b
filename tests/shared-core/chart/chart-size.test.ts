import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { beadsPerCm2, chartSize } from '../../../shared-core/chart/chart-size.ts'
import { layoutChart } from '../../../shared-core/chart/layout.ts'
import { anyChart } from './any-chart.ts'
import { beadOf, CYLINDER } from './forms.ts'
import { drawn } from './picture.ts'

describe('chartSize', () => {
  it('grows its range with the number of beads', () => {
    const { widthMm, heightMm } = chartSize(drawn('brick', ['A A A A A A A A A A']), CYLINDER)
    expect(widthMm.value).toBeCloseTo(16)
    expect(widthMm.low).toBeCloseTo(15.5)
    expect(widthMm.high).toBeCloseTo(16.5)
    expect(heightMm).toEqual({ low: 1.25, value: 1.3, high: 1.35, basis: 'estimated' })
  })

  it('allows for thread between the rows of peyote and the columns of square stitch', () => {
    const peyote = chartSize(drawn('peyote', ['A', 'A', 'A', 'A']), beadOf(2, 1))
    expect(peyote.heightMm).toMatchObject({ low: 8, value: 8, high: 8.4 })
    const square = chartSize(drawn('square', ['A A A']), beadOf(2, 1), { threadMm: 0.1 })
    expect(square.widthMm).toMatchObject({ low: 3, value: 3, high: 3.2 })
  })

  it('has the layout between its ends', () => {
    fc.assert(
      fc.property(anyChart(), fc.double({ min: 0, max: 0.3, noNaN: true }), (chart, threadMm) => {
        const { widthMm, heightMm } = chartSize(chart, CYLINDER, { threadMm })
        const layout = layoutChart(chart, CYLINDER, { threadMm })
        expect([widthMm.value, heightMm.value]).toEqual([layout.widthMm, layout.heightMm])
        expect(widthMm.low).toBeLessThanOrEqual(widthMm.value)
        expect(widthMm.high).toBeGreaterThanOrEqual(widthMm.value)
        expect(heightMm.low).toBeLessThanOrEqual(heightMm.value)
        expect(heightMm.high).toBeGreaterThanOrEqual(heightMm.value)
      }),
    )
  })
})

describe('beadsPerCm2', () => {
  it.each([
    { bead: 'cylinder 15/0', form: beadOf(1.3, 1.05), perCm2: 73 },
    { bead: 'cylinder 11/0', form: beadOf(1.6, 1.3), perCm2: 48 },
    { bead: 'cylinder 10/0', form: beadOf(2.1, 1.65), perCm2: 29 },
    { bead: 'round 15/0', form: beadOf(1.5, 1.1), perCm2: 61 },
  ])('packs $perCm2 touching $bead beads into a square centimetre', ({ form, perCm2 }) => {
    expect(Math.round(beadsPerCm2('brick', form).value)).toBe(perCm2)
    expect(Math.round(beadsPerCm2('peyote', form).value)).toBe(perCm2)
  })

  it('packs fewer with thread between the rows', () => {
    // 285 beads a square inch, counted in real brick work.
    const perInch2 = beadsPerCm2('brick', CYLINDER, { threadMm: 0.11 }).value * 6.4516
    expect(perInch2).toBeGreaterThan(283)
    expect(perInch2).toBeLessThan(287)
  })
})
