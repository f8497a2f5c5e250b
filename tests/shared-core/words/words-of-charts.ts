import type { Chart, StitchKind } from '../../../shared-core/chart/chart.ts'
import { parseWordChart } from '../../../shared-core/words/parse-word-chart.ts'
import {
  type WordChartOptions,
  writeWordChart,
} from '../../../shared-core/words/write-word-chart.ts'

/** The lines of a chart told in words. */
export const lines = (chart: Chart, options: WordChartOptions = {}): readonly string[] =>
  writeWordChart(chart, options).lines.map(({ text }) => text)

/** The chart that words tell; they must be readable. */
export const parsed = (text: string, stitch: StitchKind): Chart => {
  const outcome = parseWordChart(text, { stitch })
  if (!outcome.ok) throw new Error(outcome.error.map(({ message }) => message).join('\n'))
  return outcome.value.chart
}
