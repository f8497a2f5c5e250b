import { describe, expect, it } from 'vitest'
import { indexBeads } from '../../../shared-core/chart/bead-index.ts'
import { type Chart, STITCH_KINDS, type StitchKind } from '../../../shared-core/chart/chart.ts'
import { chartSize } from '../../../shared-core/chart/chart-size.ts'
import { compareCharts } from '../../../shared-core/chart/compare-charts.ts'
import { countSlots } from '../../../shared-core/chart/count-slots.ts'
import { layoutChart } from '../../../shared-core/chart/layout.ts'
import { traceOutline } from '../../../shared-core/chart/outline.ts'
import { writeGridFile } from '../../../shared-core/chart/write-grid-file.ts'
import { parseWordChart } from '../../../shared-core/words/parse-word-chart.ts'
import { wordChartText, writeWordChart } from '../../../shared-core/words/write-word-chart.ts'
import { CYLINDER } from './forms.ts'

const phase = (stitch: StitchKind, row: number): number =>
  stitch === 'brick' ? row % 2 : stitch === 'right-angle-weave' ? 1 - (row % 2) : 0

const panel = (stitch: StitchKind, rows: number, columns: number): Chart => ({
  stitch,
  rows: Array.from({ length: rows }, (_, row) => ({
    start: phase(stitch, row),
    cells: new Uint16Array(columns).fill(1),
  })),
})

const CHARTS: readonly (readonly [string, (stitch: StitchKind) => Chart])[] = [
  ['no rows', (stitch) => ({ stitch, rows: [] })],
  ['one row without cells', (stitch) => panel(stitch, 1, 0)],
  ['one row of 100,000 beads', (stitch) => panel(stitch, 1, 100_000)],
  ['100,000 rows of one bead', (stitch) => panel(stitch, 100_000, 1)],
  [
    'two beads 100,000 columns apart',
    (stitch) => ({
      stitch,
      rows: [0, 1].map((row) => ({
        start: phase(stitch, row) + 199_996 * row,
        cells: Uint16Array.of(1),
      })),
    }),
  ],
]

describe.each(STITCH_KINDS)('%s', (stitch) => {
  it.each(CHARTS)('reads a chart of %s in every way there is', (_, chartOf) => {
    const chart = chartOf(stitch)
    const beads = chart.rows.reduce((sum, { cells }) => sum + cells.length, 0)
    const layout = layoutChart(chart, CYLINDER, { threadMm: 0.11 })
    expect(countSlots(chart)[0] ?? 0).toBe(beads)
    expect(indexBeads(chart).count).toBe(beads)
    expect(layout.xMm).toHaveLength(beads)
    expect(chartSize(chart, CYLINDER, { threadMm: 0.11 }).widthMm.value).toBe(layout.widthMm)
    expect(traceOutline(chart, layout.pitch).areaMm2 > 0).toBe(beads > 0)
    expect(compareCharts(chart, chart).isSame).toBe(true)
    expect(writeGridFile(chart).split('\n')).toHaveLength(chart.rows.length + 2)
  })

  it('tells 10,000 rows of one bead and one row of 100,000 in words that read back', () => {
    for (const chart of [panel(stitch, 10_000, 1), panel(stitch, 1, 100_000)]) {
      const words = parseWordChart(wordChartText(writeWordChart(chart)), { stitch })
      expect(words.ok ? words.value.beads : 0).toBe(chart.rows.length === 1 ? 100_000 : 10_000)
    }
  })
})
