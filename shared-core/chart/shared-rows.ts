import type { Chart, ChartRow } from './chart.ts'
import { type ChartJson, fromChartJson, toChartJson } from './chart-json.ts'

type RowJson = ChartJson['rows'][number]

// Rows are never changed, so each is translated once; the maps hold nothing that nobody else holds.
const rowOf = new WeakMap<RowJson, ChartRow>()
const jsonOf = new WeakMap<ChartRow, RowJson>()

/**
 * Reads a stored chart as `fromChartJson` does, but each row only once: charts that share rows as
 * stored share them as cells too, so that an edit of a giant reads what it changed and no more.
 *
 * @throws RangeError for rows that cannot have been written: a damaged store.
 */
export function sharedChart({ stitch, rows }: ChartJson): Chart {
  return { stitch, rows: rows.map((json) => rowOf.get(json) ?? keep(readRow(json), json)) }
}

/** Writes a chart as `toChartJson` does, but each row only once; the way back of `sharedChart`, row by row. */
export function sharedChartJson({ stitch, rows }: Chart): ChartJson {
  return {
    stitch,
    rows: rows.map((row) => {
      const known = jsonOf.get(row)
      if (known !== undefined) return known
      const json = writeRow(row)
      keep(row, json)
      return json
    }),
  }
}

function keep(row: ChartRow, json: RowJson): ChartRow {
  rowOf.set(json, row)
  jsonOf.set(row, json)
  return row
}

// What the stitch is has no part in how a single row is written.
function readRow(json: RowJson): ChartRow {
  return fromChartJson({ stitch: 'square', rows: [json] }).rows[0] as ChartRow
}

function writeRow(row: ChartRow): RowJson {
  return toChartJson({ stitch: 'square', rows: [row] }).rows[0] as RowJson
}
