import type { Mark, Measure, Page } from '../draw-list.ts'
import { writeCautions } from './caution-pages.ts'
import { writeChart } from './chart-pages.ts'
import { chartToPrint } from './chart-to-print.ts'
import { writeCover } from './cover-page.ts'
import { writeMaterials } from './materials-pages.ts'
import { piecePicture } from './piece-picture.ts'
import type { SheetData } from './sheet-data.ts'
import { type Frame, sheetFrame } from './sheet-frame.ts'
import { EDGE, rule, SOFT, text } from './sheet-style.ts'
import { SheetWriter } from './sheet-writer.ts'
import { slotLooks } from './slot-look.ts'
import { writeSteps } from './step-pages.ts'
import { writeStrandChart } from './strand-chart.ts'
import { wordMeasure } from './word-measure.ts'
import { writeWords } from './word-pages.ts'

/** Lays out a pattern sheet: cover, materials, charts, word chart, steps and cautions, with heads and page numbers. */
export function patternSheet(data: SheetData, measure: Measure): readonly Page[] {
  const frame = sheetFrame(data.paper)
  const writer = new SheetWriter(frame, wordMeasure(measure))
  const lookOf = slotLooks(data)
  writeCover(writer, data, piecePicture(data, lookOf))
  writeMaterials(writer, data, lookOf)
  for (const part of data.body.parts) {
    const chart = part.kind === 'panel' ? chartToPrint(part, data, lookOf) : undefined
    if (chart !== undefined) writeChart(writer, chart)
  }
  writeStrandChart(writer, data, lookOf)
  writeWords(writer, data)
  writeSteps(writer, data)
  writeCautions(writer, data)
  const { widthMm, heightMm } = frame
  const all = writer.pages.length
  return writer.pages.map((marks, at) => ({
    widthMm,
    heightMm,
    marks: [...marks, ...edges({ writer, frame, data, number: at + 1, all })],
  }))
}

type Edges = Readonly<{
  writer: SheetWriter
  frame: Frame
  data: SheetData
  number: number
  all: number
}>

/** Running head, but on the cover, and foot with the page's number. */
function edges({ writer, frame, data, number, all }: Edges): readonly Mark[] {
  const { left, right, headY, footY } = frame
  const style = { sizePt: 8, colour: SOFT } as const
  const short = (words: string, room: number) => writer.wrapped(words, 'text', 8, room, 1)[0] ?? ''
  const foot = [
    text(left, footY, short(`Designed by ${data.maker}`, 110), style),
    text(right, footY, `Page ${number} of ${all}`, { ...style, align: 'right' }),
  ]
  if (number === 1) return foot
  return [
    text(left, headY, short(data.name, 100), style),
    text(right, headY, short(data.colourway, 60), { ...style, align: 'right' }),
    rule(left, right, headY + 2, { colour: EDGE, widthMm: 0.15 }),
    ...foot,
  ]
}
