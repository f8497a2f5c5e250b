import { fromChartJson } from '../../../../shared-core/chart/chart-json.ts'
import { writeWordChart } from '../../../../shared-core/words/write-word-chart.ts'
import type { Mark } from '../draw-list.ts'
import type { SheetData } from './sheet-data.ts'
import { EDGE } from './sheet-style.ts'
import type { SheetWriter } from './sheet-writer.ts'

const SIZE_PT = 9
const LEAD_MM = 4.6

/** Writes the word chart of every part, a line a row in the order of work, each with a box to tick. */
export function writeWords(writer: SheetWriter, data: SheetData): void {
  writer.newPage()
  writer.title('Word chart')
  const panels = data.body.parts.filter((part) => part.kind === 'panel')
  for (const panel of panels) {
    const lines = data.reading.parts.find(({ partId }) => partId === panel.id)?.words ?? []
    if (lines.length === 0) continue
    writer.heading(panel.name)
    writer.note(writeWordChart(fromChartJson(panel.chart)).intro.join(' '))
    writer.down(0.5)
    writeLines(writer, lines)
  }
  const strands = data.body.parts.filter((part) => part.kind === 'strand')
  if (strands.length === 0) return
  writer.heading('Strands')
  writer.note(
    'Beads in the order they are picked up, from the work outwards: a number and a letter.',
  )
  const lines = strands.flatMap(({ id, copies }) => {
    const words = data.reading.parts.find(({ partId }) => partId === id)?.words ?? []
    return words.map((line) => (copies > 1 ? `${line}, ${copies} times` : line))
  })
  writeLines(writer, lines)
}

function writeLines(writer: SheetWriter, lines: readonly string[]): void {
  const half = (writer.width - 9) / 2 - LEAD_MM
  const widest = lines.reduce(
    (most, line) => Math.max(most, writer.measure(line, 'text', SIZE_PT)),
    0,
  )
  const isNarrow = widest <= half && lines.length > 24
  if (isNarrow) writer.columns(2)
  for (const words of lines) {
    writer.paragraph({ words, sizePt: SIZE_PT, leadMm: LEAD_MM, hangMm: 4, before: tickBox })
  }
  if (isNarrow) writer.columns(1)
}

function tickBox(xMm: number, yMm: number): readonly Mark[] {
  return [
    {
      kind: 'box',
      xMm: xMm + 0.1,
      yMm: yMm - 2.5,
      widthMm: 2.6,
      heightMm: 2.6,
      radiusMm: 0.4,
      fill: null,
      stroke: { colour: EDGE, widthMm: 0.2 },
    },
  ]
}
