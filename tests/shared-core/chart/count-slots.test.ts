import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { indexBeads } from '../../../shared-core/chart/bead-index.ts'
import { countBeads, countSlots } from '../../../shared-core/chart/count-slots.ts'
import { anyChart } from './any-chart.ts'
import { drawn } from './picture.ts'

describe('countSlots', () => {
  it('counts each slot and leaves blanks out', () => {
    expect([...countSlots(drawn('square', ['A B   A', '    C', '']))]).toEqual([2, 1, 1])
  })

  it('ends at the last slot used, also a far one', () => {
    const row = { start: 0, cells: Uint16Array.of(65_535, 0, 1) }
    const counts = countSlots({ stitch: 'square', rows: [row] })
    expect([counts.length, counts[0], counts[65_534]]).toEqual([65_535, 1, 1])
  })

  it('sums to the beads of the chart', () => {
    fc.assert(
      fc.property(anyChart(), (chart) => {
        const total = countSlots(chart).reduce((sum, count) => sum + count, 0)
        expect(total).toBe(indexBeads(chart).count)
        expect(countBeads(chart)).toBe(total)
      }),
    )
  })

  it('counts nothing in a chart without beads', () => {
    expect([...countSlots({ stitch: 'brick', rows: [] })]).toEqual([])
  })
})
