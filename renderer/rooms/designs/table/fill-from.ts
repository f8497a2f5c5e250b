import type { CellRef, Chart } from '../../../../shared-core/chart/chart.ts'
import { type ChartEdit, editTo } from '../../../../shared-core/chart/edits/chart-edit.ts'
import { floodFill } from '../../../../shared-core/chart/edits/flood-fill.ts'
import { mirrorAxes, withMirrored } from '../../../../shared-core/chart/edits/mirror-runs.ts'
import type { MirrorWay } from './tools.ts'

/** Fills the patch round a cell and, with a mirror, those round its images; `undefined` where there is nothing to fill. */
export function fillFrom(
  chart: Chart,
  cell: CellRef,
  { slot, mirror }: Readonly<{ slot: number; mirror: MirrorWay }>,
): ChartEdit | undefined {
  const axes = mirror === 'none' ? undefined : mirrorAxes(chart)
  const seed = { ...cell, count: 1, cell: slot + 1 }
  const seeds =
    axes === undefined || mirror === 'none' ? [seed] : [...withMirrored([seed], axes, mirror)]
  let filled = chart
  for (const { row, at } of seeds) filled = floodFill(filled, { row, at }, slot).chart
  const edit = editTo(chart, filled)
  return edit.inverse.splices.length === 0 ? undefined : edit
}
