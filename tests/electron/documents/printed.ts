import {
  type PrintedChart,
  printedChart,
} from '../../../electron/service/documents/pattern-sheet/printed-chart.ts'
import { slotLooks } from '../../../electron/service/documents/pattern-sheet/slot-look.ts'
import type { Chart } from '../../../shared-core/chart/chart.ts'
import { stitchPitch } from '../../../shared-core/chart/stitch-pitch.ts'
import { writeWordChart } from '../../../shared-core/words/write-word-chart.ts'
import { sheetOfSample } from './sheet-of-sample.ts'

/** How the slots of the samphire studs look. */
export const looks = slotLooks(sheetOfSample('Samphire studs'))

/** A chart as it is printed, its beads cylinders of 1.6 by 1.3 mm. */
export function printed(chart: Chart): PrintedChart | undefined {
  const size = { diameterMm: 1.6, lengthMm: 1.3, threadMm: 0.11 }
  const pitch = stitchPitch(chart.stitch, size)
  const words = writeWordChart(chart).lines.map(({ text }) => text)
  return printedChart({ name: 'Panel', chart, pitch, lookOf: looks, words })
}
