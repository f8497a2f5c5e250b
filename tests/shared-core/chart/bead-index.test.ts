import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { findBead, indexBeads } from '../../../shared-core/chart/bead-index.ts'
import { slotAt } from '../../../shared-core/chart/chart.ts'
import { anyChart } from './any-chart.ts'
import { drawn } from './picture.ts'

describe('indexBeads', () => {
  it('numbers beads row by row from the top, left to right, and skips blanks', () => {
    const index = indexBeads(drawn('brick', [' A B', '', ' C   A', 'A']))
    expect({
      ...index,
      rowOf: [...index.rowOf],
      atOf: [...index.atOf],
      slotOf: [...index.slotOf],
      rowStart: [...index.rowStart],
    }).toEqual({
      count: 5,
      rowOf: [0, 0, 2, 2, 3],
      atOf: [1, 3, 1, 5, 0],
      slotOf: [0, 1, 2, 0, 0],
      rowStart: [0, 2, 2, 4, 5],
    })
  })

  it('agrees with the chart at every bead', () => {
    fc.assert(
      fc.property(anyChart(), (chart) => {
        const { count, rowOf, atOf, slotOf } = indexBeads(chart)
        for (let bead = 0; bead < count; bead += 1) {
          const cell = { row: rowOf[bead] ?? -1, at: atOf[bead] ?? -1 }
          expect(slotAt(chart, cell)).toBe(slotOf[bead])
        }
      }),
    )
  })

  it('costs six bytes a bead while rows and positions fit two bytes, ten beyond', () => {
    const bytes = (columns: number): number => {
      const row = { start: 0, cells: new Uint16Array(columns).fill(1) }
      const { rowOf, atOf, slotOf } = indexBeads({ stitch: 'square', rows: [row] })
      return rowOf.byteLength + atOf.byteLength + slotOf.byteLength
    }
    expect(bytes(32_767)).toBe(6 * 32_767)
    expect(bytes(32_768)).toBe(8 * 32_768)
  })

  it('keeps the far positions of a row of 100,000 beads', () => {
    const row = { start: 0, cells: new Uint16Array(100_000).fill(1) }
    const index = indexBeads({ stitch: 'loom', rows: [row] })
    expect(findBead(index, 0, 199_998)).toBe(99_999)
  })

  it('is empty for a chart without rows', () => {
    expect(indexBeads({ stitch: 'brick', rows: [] }).count).toBe(0)
  })
})

describe('findBead', () => {
  it('finds each bead at its own cell and none elsewhere', () => {
    fc.assert(
      fc.property(
        anyChart(),
        fc.integer({ min: -2, max: 12 }),
        fc.integer({ min: -3, max: 40 }),
        (chart, row, at) => {
          const index = indexBeads(chart)
          const bead = findBead(index, row, at)
          expect(bead >= 0).toBe(slotAt(chart, { row, at }) >= 0)
          if (bead >= 0) expect([index.rowOf[bead], index.atOf[bead]]).toEqual([row, at])
        },
      ),
      { numRuns: 500 },
    )
  })
})
