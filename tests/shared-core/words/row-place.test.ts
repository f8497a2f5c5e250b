import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { indexBeads } from '../../../shared-core/chart/bead-index.ts'
import { STITCH_KINDS } from '../../../shared-core/chart/chart.ts'
import { cellStep, latticeRows } from '../../../shared-core/words/lattice-rows.ts'
import { rowPlace } from '../../../shared-core/words/row-place.ts'
import { writeWordChart } from '../../../shared-core/words/write-word-chart.ts'
import { drawChart } from '../stitches/draw-chart.ts'
import { randomCharts } from '../stitches/random-charts.ts'

describe('rowPlace', () => {
  it('counts rows from the top and beads from the left, and no gap', () => {
    const index = indexBeads(drawChart('square', ['AAAA', 'A.AA']))
    const places = Array.from({ length: index.count }, (_, bead) => rowPlace('square', index, bead))
    expect(places.slice(4)).toEqual([
      { row: 2, bead: 1, of: 3 },
      { row: 2, bead: 2, of: 3 },
      { row: 2, bead: 3, of: 3 },
    ])
  })

  it.each(STITCH_KINDS)(
    'finds every bead where the rows of the word chart have it, in %s',
    (stitch) => {
      fc.assert(
        fc.property(randomCharts(stitch), (chart) => {
          const index = indexBeads(chart)
          const rows = latticeRows(chart)
          const told = new Set(writeWordChart(chart).lines.flatMap((line) => line.rows))
          for (let bead = 0; bead < index.count; bead += 1) {
            const place = rowPlace(stitch, index, bead)
            expect(told).toContain(place.row)
            const row = rows[place.row - 1]
            const ats = Array.from(row?.cells ?? []).flatMap((cell, at) =>
              cell === 0 ? [] : [(row?.start ?? 0) + cellStep(stitch) * at],
            )
            expect(ats[place.bead - 1]).toBe(index.atOf[bead])
            expect(place.of).toBe(ats.length)
          }
        }),
        { numRuns: 60 },
      )
    },
  )
})
