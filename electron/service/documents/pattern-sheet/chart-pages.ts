import type { Mark } from '../draw-list.ts'
import { blockMarks, slotStamps } from './chart-marks.ts'
import { type ChartBlock, planChart } from './chart-plan.ts'
import { pageMap } from './page-map.ts'
import type { PrintedChart } from './printed-chart.ts'
import { LINE } from './sheet-frame.ts'
import { EDGE, SOFT, TIDE, text } from './sheet-style.ts'
import type { SheetWriter } from './sheet-writer.ts'
import type { SlotLook } from './slot-look.ts'

const NUMBER_PT = 6.5
const HINT =
  'A number stands where its row begins; its arrow points the way of work, seen from the front.'
const NO_MAP = { widthMm: 0, marks: [] } as const

/** Writes a chart over as many pages as it needs, each with its legend. */
export function writeChart(writer: SheetWriter, printed: PrintedChart): void {
  const { frame } = writer
  const looks = slotsUsed(printed).map(printed.lookOf)
  const legend = layLegend(writer, looks, HINT)
  const rows = printed.chart.rows.length * (printed.chart.stitch === 'peyote' ? 2 : 1)
  const gutterMm = 4.3 + writer.measure(String(rows), 'text-strong', NUMBER_PT) + 1
  const room = {
    left: frame.left,
    right: frame.right,
    top: frame.top + 2.5 * LINE,
    bottom: frame.bottom - legend.lines * LINE - 3,
  }
  const plan = planChart({ extent: printed.extent, pitch: printed.pitch, room, gutterMm })
  plan.pages.forEach((blocks, number) => {
    writer.newPage()
    const of = { number, pages: plan.pages, blocks }
    writer.put(...heading(writer, printed, of))
    for (const block of blocks) {
      writer.put(...blockMarks(printed, block, plan.scale, gutterMm))
    }
    writer.put(...legend.marks)
  })
}

function slotsUsed({ chart }: PrintedChart): readonly number[] {
  const used = new Set<number>()
  for (const { cells } of chart.rows) for (const cell of cells) if (cell !== 0) used.add(cell - 1)
  return [...used].sort((a, b) => a - b)
}

type PageOf = Readonly<{
  number: number
  pages: readonly (readonly ChartBlock[])[]
  blocks: readonly ChartBlock[]
}>

function heading(
  writer: SheetWriter,
  printed: PrintedChart,
  { number, pages, blocks }: PageOf,
): readonly Mark[] {
  const { frame } = writer
  const y = frame.top + LINE
  const [first, last] = [blocks[0], blocks.at(-1)]
  const per = printed.chart.stitch === 'peyote' ? 2 : 1
  const rows = `Rows ${(first?.rows[0] ?? 0) * per + 1} to ${(last?.rows[1] ?? 0) * per}`
  const column = (at: number) => Math.floor((at - printed.extent.minAt) / 2) + 1
  const columns =
    first === undefined ? '' : `, columns ${column(first.at[0])} to ${column(first.at[1] - 1)}`
  const all = pages.length
  const part = all === 1 ? '' : `. Part ${number + 1} of ${all}`
  const corner = { rightMm: frame.right, bottomMm: y + 0.6 }
  const map = all === 1 ? NO_MAP : pageMap(printed, pages, number, corner)
  const right = frame.right - map.widthMm - (all === 1 ? 0 : 3)
  const room = right - frame.left - 86
  const title = writer.wrapped(`Chart: ${printed.name}`, 'title', 16, room, 1)[0] ?? ''
  return [
    text(frame.left, y, title, { face: 'title', sizePt: 16 }),
    text(right, y, `${rows}${columns}${part}`, { colour: SOFT, sizePt: 9, align: 'right' }),
    ...map.marks,
  ]
}

/** Names beside swatches in three columns where they fit; letters alone where slots are many. */
export function layLegend(
  writer: SheetWriter,
  looks: readonly SlotLook[],
  hint: string,
): Readonly<{ lines: number; marks: readonly Mark[] }> {
  const { frame } = writer
  const named = looks.length <= 15
  const columns = named ? 3 : 12
  const shown = looks.slice(0, 60)
  const lines = Math.ceil(shown.length / columns) + 1
  const wide = (frame.right - frame.left) / columns
  const top = frame.bottom - (lines - 1) * LINE
  const marks: Mark[] = shown.flatMap((look, i) => {
    const x = frame.left + (i % columns) * wide
    const y = top + (Math.floor(i / columns) + 1) * LINE
    const box = { widthMm: 3.9, heightMm: 3.9, turnRad: 0 }
    const stamps = slotStamps(look, { places: [[x + 2, y - 1.2]], ...box })
    const letter = text(x + 5.2, y, look.letter, { face: 'text-strong', sizePt: 9 })
    if (!named) return [...stamps, letter]
    const room = wide - 13
    const name = writer.wrapped(look.name, 'text', 9, room, 1)[0] ?? ''
    return [...stamps, letter, text(x + 10, y, name, { sizePt: 9 })]
  })
  const more = shown.length < looks.length ? ' Further symbols: see Materials.' : ''
  return {
    lines: lines + 1,
    marks: [
      {
        kind: 'line',
        fromMm: [frame.left, top - 4],
        toMm: [frame.right, top - 4],
        widthMm: 0.2,
        colour: EDGE,
      },
      text(frame.left, top, `${hint}${more}`, { sizePt: 8.5, colour: TIDE }),
      ...marks,
    ],
  }
}
