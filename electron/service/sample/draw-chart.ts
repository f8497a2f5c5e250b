import type { StitchKind } from '../../../shared-core/chart/chart.ts'
import type { ChartJson } from '../../../shared-core/chart/chart-json.ts'
import { toChartJson } from '../../../shared-core/chart/chart-json.ts'

/** Reads a chart drawn as text, a line a row: its start in half beads, then a letter a bead, `.` for none. */
export function drawChart(stitch: StitchKind, drawing: string): ChartJson {
  const rows = drawing.trim().split('\n').map(drawRow)
  return toChartJson({ stitch, rows })
}

function drawRow(line: string): Readonly<{ start: number; cells: Uint16Array }> {
  const [start = '', letters = ''] = line.trim().split(' ')
  const cells = Uint16Array.from([...letters], (letter) =>
    letter === '.' ? 0 : letter.charCodeAt(0) - 64,
  )
  return { start: Number(start), cells }
}
