import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import type { Chart } from './chart.ts'
import { type ChartJson, fromChartJson } from './chart-json.ts'
import { MAX_CELLS, MAX_COLUMNS, MAX_ROWS } from './chart-limits.ts'

/**
 * Reads a chart that somebody sent, before any room is made for it.
 *
 * @param field - Where the chart stood, for the refusal.
 * @returns the chart; `chart-unreadable` for a row that is not runs, or `chart-too-large`.
 */
export function readChartJson(chart: ChartJson, field: string): Result<Chart, Refusal> {
  if (chart.rows.length > MAX_ROWS) return tooLarge(field, `${chart.rows.length} rows`)
  let cells = 0
  for (const { start, cells: text } of chart.rows) {
    const width = runsWidth(text)
    if (width === undefined || !Number.isInteger(start) || start < 0) {
      return err<Refusal>({
        code: 'chart-unreadable',
        message: `A row of the chart reads "${text.slice(0, 40)}" from position ${start}.`,
        next: 'Give each row as runs such as 3A 2- 1B and a start of 0 or more half beads.',
        field,
      })
    }
    if (start / 2 + width > MAX_COLUMNS + 1) return tooLarge(field, `${width} columns`)
    cells += width
  }
  if (cells > MAX_CELLS) return tooLarge(field, `${cells} cells`)
  return ok(fromChartJson(chart))
}

/** Cells in a row's runs, or `undefined` when they are not such runs. */
function runsWidth(text: string): number | undefined {
  if (text === '') return 0
  let width = 0
  for (const run of text.split(' ')) {
    const match = /^([1-9]\d{0,6})(?:[A-Z]{1,3}|-)$/.exec(run)
    if (match === null) return undefined
    width += Number(match[1])
  }
  return width
}

function tooLarge(field: string, found: string) {
  return err<Refusal>({
    code: 'chart-too-large',
    message: `The chart has ${found}.`,
    next: `A chart holds up to ${MAX_ROWS} rows, ${MAX_COLUMNS} columns and ${MAX_CELLS} cells: split it into panels.`,
    field,
  })
}
