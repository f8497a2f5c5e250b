import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { OUTLINE_KINDS } from '../../../../shared-core/chart/outlines/chart-from-outline.ts'
import { beadsOfRow, fringeTop } from '../../../../shared-core/chart/outlines/fringe-top.ts'

describe('fringeTop', () => {
  it('is the whole of a triangle and of a band', () => {
    for (const kind of ['triangle', 'band'] as const) {
      const top = fringeTop({ kind, stitch: 'brick', columns: 7, rows: 7 })
      expect(top.ok && top.value.chart.rows.length).toBe(7)
      expect(top.ok && beadsOfRow(top.value.chart.rows.at(-1))).toBe(7)
    }
  })

  it('is the upper half of a diamond', () => {
    const top = fringeTop({ kind: 'diamond', stitch: 'brick', columns: 9, rows: 8 })
    expect(top.ok && top.value.chart.rows.map(beadsOfRow)).toEqual([2, 3, 4, 5, 6, 7, 8, 9])
  })

  it('ends with its widest row, whatever the outline, stitch and size', () => {
    const kinds = fc.constantFrom(...OUTLINE_KINDS)
    const stitches = fc.constantFrom('brick', 'peyote', 'square', 'loom')
    const size = fc.integer({ min: 1, max: 40 })
    fc.assert(
      fc.property(kinds, stitches, size, size, (kind, stitch, columns, rows) => {
        const top = fringeTop({ kind, stitch, columns, rows })
        if (!top.ok) throw new Error(top.error.message)
        const beads = top.value.chart.rows.map(beadsOfRow)
        expect(beads.at(-1)).toBe(Math.max(...beads))
        expect(beads.length).toBeGreaterThan(0)
      }),
    )
  })
})
