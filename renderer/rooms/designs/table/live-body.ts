import { sharedChartJson } from '../../../../shared-core/chart/shared-rows.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { TableView } from './table-state.ts'
import { isReadAtOnce } from './use-live-reading.ts'

/**
 * The body with the stroke that is being drawn, where it is small enough for the figures to follow the
 * brush; else the body as it was before the stroke.
 */
export function liveBody(
  body: DesignBody,
  { isDrawing, panel, chart }: Pick<TableView, 'isDrawing' | 'panel' | 'chart'>,
): DesignBody {
  if (!isDrawing || panel === undefined || !isReadAtOnce(body)) return body
  const drawn = { ...panel, chart: sharedChartJson(chart) }
  return { ...body, parts: body.parts.map((part) => (part.id === panel.id ? drawn : part)) }
}
