import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exportText } from '../../../electron/service/documents/export-text.ts'
import { readOrder } from '../../../electron/service/documents/pattern-sheet/make-pattern-sheet.ts'
import { readCsv } from '../../../electron/service/exchange/csv-table.ts'
import { slotLabel } from '../../../shared-core/chart/chart.ts'
import type { ChartJson } from '../../../shared-core/chart/chart-json.ts'
import { fromChartJson } from '../../../shared-core/chart/chart-json.ts'
import { readGridFile } from '../../../shared-core/chart/read-grid-file.ts'
import type { Panel } from '../../../shared-core/design/design.ts'
import { sheetOfSample } from './sheet-of-sample.ts'

const sample = sheetOfSample('Sluice cuff')
const panel = sample.body.parts.find((part) => part.kind === 'panel') as Panel

/** Squares of any slots, always with a bead at both ends of a row. */
const anyChart = fc
  .array(fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 1, maxLength: 12 }), {
    minLength: 1,
    maxLength: 12,
  })
  .map(
    (rows): ChartJson => ({
      stitch: 'square',
      rows: rows.map((slots) => ({
        start: 0,
        cells: slots.map((slot) => (slot === 0 ? '1-' : `1${slotLabel(slot - 1)}`)).join(' '),
      })),
    }),
  )

describe('exportText', () => {
  it('writes a grid that is read back as the same chart, blanks and all', () => {
    fc.assert(
      fc.property(anyChart, (chart) => {
        const body = { ...sample.body, parts: [{ ...panel, chart }] }
        const grid = exportText({ ...sample, body }, 'grid', panel.id)?.text ?? ''
        const read = readGridFile(grid, { fileName: 'grid.csv' })
        expect(read.ok && read.value.chart).toEqual(fromChartJson(chart))
      }),
    )
  })

  it('writes counts whose sum is the design’s, with grams in the workshop’s decimals', () => {
    for (const decimal of ['.', ','] as const) {
      const text = exportText({ ...sample, decimal }, 'counts', undefined)?.text ?? ''
      const { rows, faults } = readCsv(text.replace('\uFEFF', ''))
      expect(faults).toEqual([])
      const beads = rows.slice(1).map(({ cells }) => Number(cells[5]))
      expect(beads.reduce((sum, count) => sum + count, 0)).toBe(sample.reading.beads)
      expect(rows[1]?.cells[6]).toMatch(decimal === ',' ? /^\d+,\d\d$/ : /^\d+\.\d\d$/)
    }
  })

  it('writes no name that a spreadsheet would run', () => {
    const [key = ''] = Object.keys(sample.fillings)
    const filling = sample.fillings[key]
    if (filling === undefined) throw new Error('the sample has a bead')
    const fillings = { ...sample.fillings, [key]: { ...filling, name: '=1+2', code: '@tide' } }
    const text = exportText({ ...sample, fillings }, 'counts', undefined)?.text ?? ''
    expect(text).toContain(`"'=1+2"`)
    expect(text).toContain(`"'@tide"`)
  })

  it('writes the words of every part', () => {
    const earrings = readOrder(sheetOfSample('Reedbed fringe earrings'))
    const text = exportText(earrings, 'word-chart', undefined)?.text ?? ''
    for (const { words } of earrings.reading.parts)
      for (const line of words) expect(text).toContain(line)
  })

  it('gives nothing for a panel that is not there', () => {
    expect(exportText(sample, 'grid', 'nowhere')).toBeNull()
    expect(exportText(sample, 'chart-svg', 'nowhere')).toBeNull()
  })
})
