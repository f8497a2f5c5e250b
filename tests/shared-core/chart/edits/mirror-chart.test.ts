import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Chart } from '../../../../shared-core/chart/chart.ts'
import { mirrorChart } from '../../../../shared-core/chart/edits/mirror-chart.ts'
import { anyChart } from '../any-chart.ts'
import { drawn, picture } from '../picture.ts'
import { placedBeads } from '../placed.ts'

const mirrors = fc.constantFrom('left-right' as const, 'top-bottom' as const, 'both' as const)

/** A row without cells lies nowhere, so its start says nothing. */
const withoutIdleStarts = ({ stitch, rows }: Chart): Chart => ({
  stitch,
  rows: rows.map(({ start, cells }) => ({ start: cells.length === 0 ? 0 : start, cells })),
})

describe('mirrorChart', () => {
  it('swaps the sides of a brick panel', () => {
    const { chart } = mirrorChart(drawn('brick', [' A B', 'C D E', ' F']), 'left-right')
    expect(picture(chart)).toEqual([' B A', 'E D C', '   F'])
  })

  it('turns a brick panel upside down', () => {
    const { chart } = mirrorChart(drawn('brick', [' A B', 'C D E']), 'top-bottom')
    expect(picture(chart)).toEqual(['C D E', ' A B'])
  })

  it('keeps low columns low in peyote, so that an even count moves by one column', () => {
    const odd = mirrorChart(drawn('peyote', ['A B C']), 'left-right')
    expect(picture(odd.chart)).toEqual(['C B A'])
    const even = mirrorChart(drawn('peyote', ['A B']), 'left-right')
    expect(picture(even.chart)).toEqual(['  B A'])
  })

  it('turns an even peyote band half round in its place', () => {
    const { chart } = mirrorChart(drawn('peyote', ['A B', 'C D']), 'both')
    expect(picture(chart)).toEqual(['D C', 'B A'])
  })

  it('places every bead at its image', () => {
    fc.assert(
      fc.property(anyChart(), mirrors, (chart, mirror) => {
        const image = placedBeads(chart, ({ x, y }) => ({
          x: mirror === 'top-bottom' ? x : -x,
          y: mirror === 'left-right' ? y : -y,
        }))
        expect(placedBeads(mirrorChart(chart, mirror).chart)).toEqual(image)
      }),
      { numRuns: 600 },
    )
  })

  it('gives the chart again when done twice', () => {
    fc.assert(
      fc.property(anyChart(), mirrors, (chart, mirror) => {
        const once = mirrorChart(chart, mirror).chart
        expect(withoutIdleStarts(mirrorChart(once, mirror).chart)).toEqual(withoutIdleStarts(chart))
      }),
      { numRuns: 600 },
    )
  })
})
