import { findForm, findThread } from '../../../../shared-core/beads/bead-tables.ts'
import { fromChartJson } from '../../../../shared-core/chart/chart-json.ts'
import { stitchPitch, threadGapMm } from '../../../../shared-core/chart/stitch-pitch.ts'
import type { Panel } from '../../../../shared-core/design/design.ts'
import { type PrintedChart, printedChart } from './printed-chart.ts'
import type { SheetData } from './sheet-data.ts'
import type { SlotLook } from './slot-look.ts'

/** A panel's chart ready to print; nothing when it has no beads. */
export function chartToPrint(
  panel: Panel,
  { body, reading, tables }: SheetData,
  lookOf: (slot: number) => SlotLook,
): PrintedChart | undefined {
  const form = findForm(tables, panel.formId)
  if (form === undefined) return undefined
  const chart = fromChartJson(panel.chart)
  const thread = findThread(tables, body.threadId)
  const pitch = stitchPitch(chart.stitch, {
    diameterMm: form.diameterMm.value,
    lengthMm: form.lengthMm.value,
    threadMm: threadGapMm(thread?.diameterMm.value ?? 0),
  })
  const words = reading.parts.find(({ partId }) => partId === panel.id)?.words ?? []
  return printedChart({ name: panel.name, chart, pitch, lookOf, words })
}
