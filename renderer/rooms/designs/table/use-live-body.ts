import { useMemo } from 'react'
import type { Chart } from '../../../../shared-core/chart/chart.ts'
import { sharedChartJson } from '../../../../shared-core/chart/shared-rows.ts'
import type { DesignBody, Panel } from '../../../../shared-core/design/design.ts'
import type { TableModel } from './table-model.ts'
import type { TableView } from './table-state.ts'
import { isReadAtOnce } from './use-live-reading.ts'
import { useTableView } from './use-table-model.ts'

/**
 * The body with the stroke that is being drawn, where it is small enough for the figures to follow the
 * brush; else the body as it was before the stroke.
 */
export function useLiveBody(model: TableModel, body: DesignBody): DesignBody {
  const isSmall = useMemo(() => isReadAtOnce(body), [body])
  const panel = useTableView(model, panelOf)
  const chart = useTableView(model, isSmall ? drawnChart : nothingDrawn)
  return useMemo(() => withChart(body, panel, chart), [body, panel, chart])
}

const panelOf = ({ panel }: TableView) => panel
const drawnChart = ({ isDrawing, chart }: TableView) => (isDrawing ? chart : undefined)
const nothingDrawn = () => undefined

function withChart(
  body: DesignBody,
  panel: Panel | undefined,
  chart: Chart | undefined,
): DesignBody {
  if (panel === undefined || chart === undefined) return body
  const drawn = { ...panel, chart: sharedChartJson(chart) }
  return { ...body, parts: body.parts.map((part) => (part.id === panel.id ? drawn : part)) }
}
