import { describe, expect, it } from 'vitest'
import type { PrintedChart } from '../../../../electron/service/documents/pattern-sheet/printed-chart.ts'
import { chartSvg } from '../../../../electron/service/exchange/chart-svg.ts'
import { fromChartJson } from '../../../../shared-core/chart/chart-json.ts'
import { printed } from '../../documents/printed.ts'

describe('chartSvg', () => {
  it('draws every bead once and is well formed', () => {
    const chart = fromChartJson({
      stitch: 'brick',
      rows: [
        { start: 0, cells: '3A 1- 2B' },
        { start: 1, cells: '2C' },
      ],
    })
    const svg = chartSvg({ ...(printed(chart) as PrintedChart), name: 'Tide & <reed>' }, 4)
    expect(svg).toContain('<title>Tide &#38; &#60;reed&#62;</title>')
    // Beads have an edge, their symbols none: three of A, two of B, two of C.
    const groups = [...svg.matchAll(/<g fill="([^"]+)"( stroke=[^>]+)?>(.*?)<\/g>/g)]
    const beads = groups
      .filter(([, , stroke]) => stroke !== undefined)
      .map(([, , , uses = '']) => uses.split('<use ').length - 1)
    expect(beads).toEqual([3, 2, 2])
    const opened = [...svg.matchAll(/<(svg|g|defs|text|title)\b/g)].map(([, tag]) => tag)
    const closed = [...svg.matchAll(/<\/(svg|g|defs|text|title)>/g)].map(([, tag]) => tag)
    expect(opened.toSorted()).toEqual(closed.toSorted())
    expect(svg.trim().endsWith('</svg>')).toBe(true)
  })
})
