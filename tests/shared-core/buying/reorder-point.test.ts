import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { normalQuantile } from '../../../shared-core/buying/normal-quantile.ts'
import { reorderPoint } from '../../../shared-core/buying/reorder-point.ts'
import vectors from '../../fixtures/vectors/reorder_point.json' with { type: 'json' }

type Vector = Readonly<{
  id: string
  inputs: Readonly<Record<string, unknown>>
  expected: Readonly<Record<string, number | number[]>>
  tolerance: number
}>
const list = vectors as unknown as readonly Vector[]

describe('normalQuantile', () => {
  it('gives the table of the normal distribution', () => {
    const { inputs, expected } = list.find(({ id }) => id === 'znorm') as Vector
    const shares = inputs['p'] as string[]
    const table = expected['z'] as number[]
    expect(table).toHaveLength(shares.length)
    shares.forEach((p, i) => {
      expect(normalQuantile(Number(p))).toBeCloseTo(table[i] ?? Number.NaN, 9)
    })
  })

  it('is odd about a half, rises with the share and refuses what is none', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 0.5, noNaN: true }), (p) => {
        expect(normalQuantile(p) + normalQuantile(1 - p)).toBeCloseTo(0, 6)
        expect(normalQuantile(p)).toBeLessThanOrEqual(normalQuantile(p * 1.01))
      }),
    )
    for (const p of [0, 1, -1, Number.NaN]) expect(() => normalQuantile(p)).toThrow(RangeError)
  })
})

describe('reorderPoint', () => {
  it.each(list.filter(({ inputs }) => 'd' in inputs).map((v) => [v.id, v] as const))(
    '%s',
    (_, { inputs, expected, tolerance }) => {
      const read = (key: string) => Number(inputs[key])
      const demand = {
        demandPerPeriod: read('d'),
        demandSd: read('sd'),
        leadPeriods: read('L'),
        leadSd: read('sL'),
      }
      const found = reorderPoint(demand, read('z'))
      const near = (value: number, key: string) => {
        if (expected[key] === undefined) return
        expect(Math.abs(value - Number(expected[key]))).toBeLessThan(tolerance)
      }
      near(found.safetyStock, 'safety_stock')
      near(found.reorderPoint, 'rop')
      near(found.sigma, 'sigma')
      const exact = reorderPoint(demand, normalQuantile(read('p')))
      near(exact.safetyStock, 'safety_stock_exact_z')
      expect(found.reorderPoint).toBeCloseTo(found.leadDemand + found.safetyStock, 9)
    },
  )

  it.each(list.filter(({ inputs }) => 'mean_lt' in inputs).map((v) => [v.id, v] as const))(
    '%s, the lead time taken as one period',
    (_, { inputs, expected, tolerance }) => {
      const demand = {
        demandPerPeriod: Number(inputs['mean_lt']),
        demandSd: Number(inputs['sigma_lt']),
        leadPeriods: 1,
        leadSd: 0,
      }
      const found = reorderPoint(demand, Number(inputs['z']))
      const level = Number(expected['rop'] ?? expected['restock_level'])
      expect(Math.abs(found.safetyStock - Number(expected['safety_stock']))).toBeLessThan(tolerance)
      expect(Math.abs(found.reorderPoint - level)).toBeLessThan(tolerance)
    },
  )
})
