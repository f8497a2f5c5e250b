import type { CellRef, StitchKind } from '../chart.ts'
import { type ChartJson, fromChartJson } from '../chart-json.ts'
import { MAX_ROWS } from '../chart-limits.ts'
import { sharedChartJson } from '../shared-rows.ts'
import type { ChartPatch } from './chart-edit.ts'

/** A patch as it is stored, so that undo outlives the session: rows as runs, see `ChartJson`. */
export type ChartPatchJson = Readonly<{
  stitch: StitchKind
  splices: readonly Readonly<{ row: number; remove: number; insert: ChartJson['rows'] }>[]
  shift: CellRef
}>

/** Writes a patch for storing. `fromPatchJson(toPatchJson(patch))` gives the same patch. */
export function toPatchJson({ stitch, splices, shift }: ChartPatch): ChartPatchJson {
  return {
    stitch,
    splices: splices.map(({ row, remove, insert }) => ({
      row,
      remove,
      insert: sharedChartJson({ stitch, rows: insert }).rows,
    })),
    shift,
  }
}

/** Reads a stored patch. @throws RangeError for rows that `toPatchJson` cannot have written: a damaged store. */
export function fromPatchJson({ stitch, splices, shift }: ChartPatchJson): ChartPatch {
  return {
    stitch,
    splices: splices.map(({ row, remove, insert }) => ({
      row,
      remove,
      insert: fromChartJson({ stitch, rows: insert }).rows,
    })),
    shift,
  }
}

/**
 * Applies a stored patch to a stored chart without reading either: rows that stay are shared.
 *
 * @returns The changed chart, or `undefined` for a patch that belongs to another chart: splices out of
 *   order, past the last row, or that would leave more than 100,000 rows.
 */
export function applyPatchJson(chart: ChartJson, patch: ChartPatchJson): ChartJson | undefined {
  const rows: ChartJson['rows'][number][] = []
  let from = 0
  for (const { row, remove, insert } of patch.splices) {
    if (row < from || row + remove > chart.rows.length) return undefined
    for (let i = from; i < row; i += 1) rows.push(chart.rows[i] as ChartJson['rows'][number])
    for (const inserted of insert) rows.push(inserted)
    from = row + remove
  }
  for (let i = from; i < chart.rows.length; i += 1) {
    rows.push(chart.rows[i] as ChartJson['rows'][number])
  }
  return rows.length > MAX_ROWS ? undefined : { stitch: patch.stitch, rows }
}
