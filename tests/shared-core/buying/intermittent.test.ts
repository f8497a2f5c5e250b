import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { crostonSteps, sbaSteps } from '../../../shared-core/buying/croston.ts'
import { demandPattern } from '../../../shared-core/buying/demand-class.ts'
import { forecastDemand, forecastsOf } from '../../../shared-core/buying/forecast-demand.ts'
import { tsbSteps } from '../../../shared-core/buying/tsb.ts'
import vectors from '../../fixtures/vectors/intermittent_demand.json' with { type: 'json' }

type Row = Readonly<{
  size: number | null
  interval?: number | null
  prob?: number
  forecast_for_next: number | null
}>
type Vector = Readonly<{
  id: string
  tolerance: number
  inputs: Readonly<{ series: number[]; alpha: number; beta?: number; init?: number[] }>
  expected: Readonly<{
    rows?: Row[]
    forecast?: number
    adi?: number
    cv2?: number
    klass?: string
  }>
}>

const cases = (start: string) =>
  (vectors as unknown as Vector[])
    .filter(({ id }) => id.startsWith(start))
    .map((vector) => [vector.id, vector] as const)

/** Tables are printed to 8 digits. */
const DIGITS = 7

describe('crostonSteps and sbaSteps', () => {
  it.each([...cases('croston'), ...cases('sba')])('%s', (id, { inputs, expected, tolerance }) => {
    const steps = (id.startsWith('sba') ? sbaSteps : crostonSteps)(inputs.series, inputs.alpha)
    if (expected.forecast !== undefined) {
      expect(Math.abs((steps.at(-1)?.forecast ?? 0) - expected.forecast)).toBeLessThan(tolerance)
      return
    }
    const rows = expected.rows ?? []
    expect(rows).toHaveLength(inputs.series.length)
    rows.forEach((row, i) => {
      const step = steps[i]
      if (row.forecast_for_next === null) {
        expect(step).toBeNull()
        return
      }
      expect(step?.size).toBeCloseTo(row.size ?? Number.NaN, DIGITS)
      expect(step?.interval).toBeCloseTo(row.interval ?? Number.NaN, DIGITS)
      expect(step?.forecast).toBeCloseTo(row.forecast_for_next, DIGITS)
    })
  })
})

describe('tsbSteps', () => {
  it.each(cases('tsb'))('%s', (_, { inputs, expected }) => {
    const [size = Number.NaN, probability = Number.NaN] = inputs.init ?? []
    const { alpha, beta = Number.NaN } = inputs
    const steps = tsbSteps(inputs.series, { alpha, beta, size, probability })
    const rows = expected.rows ?? []
    expect(rows).toHaveLength(inputs.series.length)
    rows.forEach((row, i) => {
      expect(steps[i]?.size).toBeCloseTo(row.size ?? Number.NaN, DIGITS)
      expect(steps[i]?.probability).toBeCloseTo(row.prob ?? Number.NaN, DIGITS)
      expect(steps[i]?.forecast).toBeCloseTo(row.forecast_for_next ?? Number.NaN, DIGITS)
    })
  })

  it('fades while nothing is used, where Croston stays', () => {
    const demand = [4, 4, 4, ...Array<number>(24).fill(0)]
    expect(forecastsOf(demand, 'tsb', 0.2).at(-1)).toBeLessThan(0.05)
    expect(forecastsOf(demand, 'croston', 0.2).at(-1)).toBe(4)
  })
})

describe('demandPattern', () => {
  it.each(cases('sbc'))('%s', (_, { inputs, expected }) => {
    const pattern = demandPattern(inputs.series)
    expect(pattern.kind).toBe(expected.klass)
    expect(pattern.interval).toBeCloseTo(expected.adi ?? Number.NaN, 5)
    expect(pattern.sizeVariation).toBeCloseTo(expected.cv2 ?? Number.NaN, 5)
  })

  it('calls frequent demand in unlike sizes erratic, and knows when there was none', () => {
    expect(demandPattern([9, 1, 1, 9, 1, 1]).kind).toBe('erratic')
    expect(demandPattern([0, 0, 0]).kind).toBe('none')
  })
})

describe('forecastDemand', () => {
  it('expects nothing where nothing was ever used', () => {
    expect(forecastDemand([0, 0, 0], 2)).toEqual({
      perPeriod: 0,
      method: 'none',
      alpha: 0,
      errorOverHorizon: null,
      judgedBy: 0,
    })
  })

  it('falls back to SBA with 0.1 where the history is too short to choose', () => {
    const short = forecastDemand([0, 6], 1)
    expect(short).toMatchObject({ method: 'sba', alpha: 0.1, errorOverHorizon: null })
    expect(short.perPeriod).toBeCloseTo(2.85, 12)
  })

  it('chooses the method that fades for a colour that went out of use', () => {
    const demand = [5, 6, 5, 4, 5, 6, ...Array<number>(30).fill(0)]
    expect(forecastDemand(demand, 2).method).toBe('tsb')
  })

  it('chooses no worse than any single method and smoothing, and never by what came later', () => {
    const history = fc.array(fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 40 })), {
      minLength: 8,
      maxLength: 40,
    })
    fc.assert(
      fc.property(history, fc.integer({ min: 1, max: 3 }), (demand, horizon) => {
        const best = forecastDemand(demand, horizon)
        expect(best.perPeriod).toBeGreaterThanOrEqual(0)
        if (best.errorOverHorizon === null) return
        for (const method of ['croston', 'sba', 'tsb'] as const) {
          for (const alpha of [0.05, 0.1, 0.2, 0.3]) {
            const error = errorByHand(demand, horizon, forecastsOf(demand, method, alpha))
            expect(best.errorOverHorizon).toBeLessThanOrEqual(error + 1e-9)
          }
        }
        if (best.method === 'none') return
        const whole = forecastsOf(demand, best.method, best.alpha)
        const part = forecastsOf(demand.slice(0, 5), best.method, best.alpha)
        expect(whole.slice(0, 5)).toEqual(part)
      }),
    )
  })
})

function errorByHand(
  demand: readonly number[],
  horizon: number,
  forecasts: readonly (number | null)[],
): number {
  const squares = forecasts.flatMap((forecast, period) => {
    if (forecast === null || period + horizon >= demand.length) return []
    let used = 0
    for (let ahead = 1; ahead <= horizon; ahead++) used += demand[period + ahead] ?? 0
    return [(used - horizon * forecast) ** 2]
  })
  return Math.sqrt(squares.reduce((a, b) => a + b, 0) / squares.length)
}
