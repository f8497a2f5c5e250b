import type { Chart } from '../../chart/chart.ts'
import { applyPatch, type ChartEdit } from '../../chart/edits/chart-edit.ts'
import { toPatchJson } from '../../chart/edits/patch-json.ts'
import type { DesignBody, Panel } from '../design.ts'
import type { BodyEdit, Stroke } from './body-edit.ts'
import { piecesEdit } from './body-stroke.ts'
import { followChart } from './follow-chart.ts'

/** A chart edit of one panel, and the chart it started from. */
export type DrawnEdit = Readonly<{ partId: string; before: Chart; edit: ChartEdit }>

/**
 * The stroke that an edit of a panel's chart is.
 *
 * What points into the chart goes with it: the row the work starts from, and the beads that strands
 * hang from (see `followChart`).
 */
export function chartStroke(
  label: string,
  body: DesignBody,
  { partId, before, edit }: DrawnEdit,
): Stroke {
  const redo = toPatchJson(applyPatch(edit.chart, edit.inverse).inverse)
  const undo = toPatchJson(edit.inverse)
  const panel = body.parts.find((part): part is Panel => part.id === partId)
  const followed = panel === undefined ? body : followChart(body, { panel, before, edit })
  const change = (patch: typeof redo, from: DesignBody, to: DesignBody): readonly BodyEdit[] => [
    { kind: 'chart', partId, patch },
    ...(followed === body ? [] : [piecesEdit(from, to)]),
  ]
  return { label, redo: change(redo, body, followed), undo: change(undo, followed, body) }
}
