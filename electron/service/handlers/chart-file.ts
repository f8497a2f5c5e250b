import { slotLabel } from '../../../shared-core/chart/chart.ts'
import { toChartJson } from '../../../shared-core/chart/chart-json.ts'
import { countSlots } from '../../../shared-core/chart/count-slots.ts'
import { readGridFile } from '../../../shared-core/chart/read-grid-file.ts'
import { decodeText } from '../exchange/decode-text.ts'
import type { PureHandler } from './handler.ts'

export const previewChartFile: PureHandler<'chartFile.preview'> = (input) => {
  const { text } = decodeText(Buffer.from(input.file.base64, 'base64'))
  const read = readGridFile(text, {
    fileName: input.file.fileName,
    ...(input.stitch === undefined ? {} : { stitch: input.stitch }),
  })
  if (!read.ok) return { chart: null, understood: [], counts: [], faults: [...read.error] }
  const { chart, notes } = read.value
  const { stitch, rows } = toChartJson(chart)
  return {
    chart: { stitch, rows: [...rows] },
    understood: [...notes],
    counts: [...countSlots(chart)].flatMap((count, slot) =>
      count === 0 ? [] : [{ label: slotLabel(slot), count }],
    ),
    faults: [],
  }
}
