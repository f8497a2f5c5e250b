import type { CellRef, StitchKind } from '../chart.ts'
import { type ChartJson, fromChartJson, toChartJson } from '../chart-json.ts'
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
      insert: toChartJson({ stitch, rows: insert }).rows,
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
