import { type BeadIndex, findBead, indexBeads } from '../../../shared-core/chart/bead-index.ts'
import { type Chart, slotLabel } from '../../../shared-core/chart/chart.ts'
import { type ChartJson, toChartJson } from '../../../shared-core/chart/chart-json.ts'
import { beadsPerCm2, chartSize } from '../../../shared-core/chart/chart-size.ts'
import { countBeads } from '../../../shared-core/chart/count-slots.ts'
import { layoutChart } from '../../../shared-core/chart/layout.ts'
import { neighbourSteps } from '../../../shared-core/chart/neighbours.ts'
import { traceOutline } from '../../../shared-core/chart/outline.ts'
import {
  chartFromOutline,
  type OutlineSize,
  outlineSizeFor,
} from '../../../shared-core/chart/outlines/chart-from-outline.ts'
import { readChartJson } from '../../../shared-core/chart/read-chart-json.ts'
import { holeAxis, threadGapMm } from '../../../shared-core/chart/stitch-pitch.ts'
import type { ParsedInput } from '../../../shared-core/contract/calls.ts'
import { parseWordChart } from '../../../shared-core/words/parse-word-chart.ts'
import { wordChartText, writeWordChart } from '../../../shared-core/words/write-word-chart.ts'
import { Refused } from '../refused.ts'
import { formIn, tablesWith, threadIn } from './engine-tables.ts'
import type { PureHandler } from './handler.ts'

/** The chart as sent, or a refusal that names its field. */
export function chartOf(sent: ChartJson, field = 'chart'): Chart {
  const read = readChartJson(sent, field)
  if (!read.ok) throw new Refused(read.error)
  return read.value
}

/** A chart as it is sent back. */
export function sentChart(chart: Chart) {
  const { stitch, rows } = toChartJson(chart)
  return { stitch, rows: [...rows] }
}

export const measureChart: PureHandler<'engine.geometry'> = (input) => {
  const tables = tablesWith(input.tables)
  const form = formIn(tables, input.formId)
  const chart = chartOf(input.chart)
  const threadMm =
    input.threadId === undefined
      ? 0
      : threadGapMm(threadIn(tables, input.threadId).diameterMm.value)
  const { xMm, yMm, pitch } = layoutChart(chart, form, { threadMm })
  const { loops, areaMm2 } = traceOutline(chart, pitch)
  const index = indexBeads(chart)
  return {
    ...chartSize(chart, form, { threadMm }),
    beadsPerCm2: beadsPerCm2(chart.stitch, form, { threadMm }),
    areaMm2,
    outline: loops.map((loop) => ({ ...loop, points: [...loop.points] })),
    beads: Array.from({ length: index.count }, (_, bead) => ({
      row: index.rowOf[bead] ?? 0,
      at: index.atOf[bead] ?? 0,
      label: slotLabel(index.slotOf[bead] ?? 0),
      xMm: xMm[bead] ?? 0,
      yMm: yMm[bead] ?? 0,
      hole: holeAxis(chart.stitch, index.rowOf[bead] ?? 0),
      touches: touching(chart, index, bead),
    })),
  }
}

function touching({ stitch }: Chart, index: BeadIndex, bead: number): number[] {
  const row = index.rowOf[bead] ?? 0
  const at = index.atOf[bead] ?? 0
  return neighbourSteps(stitch, row, at)
    .map(([rows, halfBeads]) => findBead(index, row + rows, at + halfBeads))
    .filter((other) => other >= 0)
    .toSorted((a, b) => a - b)
}

export const writeWords: PureHandler<'engine.writeWords'> = ({ chart, ...start }) => {
  const words = writeWordChart(chartOf(chart), start)
  return {
    intro: [...words.intro],
    lines: words.lines.map((line) => ({ ...line, rows: [...line.rows] })),
    text: wordChartText(words),
  }
}

export const readWords: PureHandler<'engine.readWords'> = ({ stitch, text }) => {
  const read = parseWordChart(text, { stitch })
  if (!read.ok) return { chart: null, beads: 0, notes: [], faults: [...read.error] }
  const { chart, beads, notes } = read.value
  return { chart: sentChart(chart), beads, notes: [...notes], faults: [] }
}

export const drawOutline: PureHandler<'engine.outline'> = (input) => {
  const { kind, stitch } = input
  const size = sizeInBeads(input)
  const drawn = chartFromOutline({ kind, stitch, ...size })
  if (!drawn.ok) throw new Refused(drawn.error)
  const { chart, notes } = drawn.value
  return { chart: sentChart(chart), ...size, beads: countBeads(chart), notes: [...notes] }
}

function sizeInBeads({ stitch, size, tables: own }: ParsedInput<'engine.outline'>): OutlineSize {
  if ('columns' in size) return size
  const tables = tablesWith(own)
  const form = formIn(tables, size.formId, 'size.formId')
  const threadMm =
    size.threadId === undefined
      ? 0
      : threadGapMm(threadIn(tables, size.threadId, 'size.threadId').diameterMm.value)
  const bead = { diameterMm: form.diameterMm.value, lengthMm: form.lengthMm.value, threadMm }
  return outlineSizeFor(stitch, size, bead)
}
