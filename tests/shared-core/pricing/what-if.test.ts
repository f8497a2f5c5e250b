import { describe, expect, it } from 'vitest'
import { priceAt } from '../../../shared-core/pricing/price-at.ts'
import { whatIfCurve } from '../../../shared-core/pricing/what-if.ts'
import { pair, webShop } from './some-channels.ts'

describe('whatIfCurve', () => {
  it('runs evenly over both ends, rising in profit as a whole', () => {
    const curve = whatIfCurve(pair, webShop, { fromMinor: 3000, toMinor: 9000, points: 13 })
    if (!curve.ok) throw new Error(curve.error.message)
    expect(curve.value.map((point) => point.priceMinor)).toEqual([
      3000, 3500, 4000, 4500, 5000, 5500, 6000, 6500, 7000, 7500, 8000, 8500, 9000,
    ])
    const profits = curve.value.map((point) => point.profitMinor)
    expect(profits).toEqual(profits.toSorted((a, b) => a - b))
    expect(curve.value[6]).toEqual(priceAt(pair, webShop, 6000))
  })

  it('gives a price once where points fall together', () => {
    const curve = whatIfCurve(pair, webShop, { fromMinor: 0, toMinor: 2, points: 500 })
    expect(curve.ok && curve.value.map((point) => point.priceMinor)).toEqual([0, 1, 2])
  })

  it.each([
    { fromMinor: 5, toMinor: 5, points: 2 },
    { fromMinor: -1, toMinor: 5, points: 2 },
    { fromMinor: 0, toMinor: 5, points: 1 },
    { fromMinor: 0, toMinor: 5, points: 501 },
    { fromMinor: 0, toMinor: 5.5, points: 2 },
  ])('refuses %j', (range) => {
    expect(whatIfCurve(pair, webShop, range)).toMatchObject({ error: { code: 'bad-range' } })
  })
})
