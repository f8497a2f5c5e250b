import { beadBox, beadTilt, cellCentre } from '../../../../shared-core/chart/stitch-pitch.ts'
import {
  type PathStep,
  placedOutline,
  roundedBox,
} from '../../../../shared-core/colour/path-step.ts'
import { slotSymbol } from '../../../../shared-core/colour/slot-symbols.ts'
import { type Mark, MM_PER_PT } from '../draw-list.ts'
import { gridLines } from './chart-grid.ts'
import { type ChartBlock, COLUMN_LABELS_MM, largestBox } from './chart-plan.ts'
import { inkFor, mixed } from './colours.ts'
import type { PrintedChart } from './printed-chart.ts'
import { rowNumbers } from './row-numbers.ts'
import { SOFT, text } from './sheet-style.ts'
import type { SlotLook } from './slot-look.ts'

/** Where a chart's millimetres fall on the page. */
export type OnPage = Readonly<{
  scale: number
  block: ChartBlock
  gutterMm: number
  x: (chartMm: number) => number
  y: (chartMm: number) => number
  /** Edges of the block's beads. */
  left: number
  top: number
  right: number
  bottom: number
}>

/** All marks of one block: beads with their symbols, lines at every tenth, numbers of rows and columns. */
export function blockMarks(
  printed: PrintedChart,
  block: ChartBlock,
  scale: number,
  gutterMm: number,
): readonly Mark[] {
  const page = onPage(printed, block, scale, gutterMm)
  return [
    ...beads(printed, page),
    ...gridLines(printed, page),
    ...rowNumbers(printed, page),
    ...columnNumbers(printed, page),
  ]
}

function onPage(
  { pitch }: PrintedChart,
  block: ChartBlock,
  scale: number,
  gutterMm: number,
): OnPage {
  const box = largestBox(pitch)
  const from = cellCentre(pitch, block.rows[0], 0)
  const to = cellCentre(pitch, block.rows[1] - 1, 0)
  const firstX = pitch.leftMm + block.at[0] * pitch.halfMm - box.widthMm / 2
  const lastX = pitch.leftMm + (block.at[1] - 1) * pitch.halfMm + box.widthMm / 2
  const firstY = from.yMm - box.heightMm / 2
  const lastY = to.yMm + pitch.dropMm + box.heightMm / 2
  const x = (mm: number) => block.xMm + gutterMm + (mm - firstX) * scale
  const y = (mm: number) => block.yMm + COLUMN_LABELS_MM + (mm - firstY) * scale
  const edges = { left: x(firstX), right: x(lastX), top: y(firstY), bottom: y(lastY) }
  return { scale, block, gutterMm, x, y, ...edges }
}

/** Beads of one slot that lie alike. */
type Alike = { slot: number; row: number; turnRad: number; places: (readonly [number, number])[] }

function beads({ chart, pitch, lookOf }: PrintedChart, page: OnPage): readonly Mark[] {
  const groups = new Map<string, Alike>()
  const { rows, at: ats } = page.block
  for (let row = rows[0]; row < rows[1]; row += 1) {
    const { start, cells } = chart.rows[row] ?? { start: 0, cells: [] }
    cells.forEach((cell: number, i: number) => {
      const at = start + 2 * i
      if (cell === 0 || at < ats[0] || at >= ats[1]) return
      const turnRad = pitch.leanRad === 0 ? 0 : beadTilt(pitch, at)
      const { widthMm } = beadBox(pitch, row)
      const key = `${cell} ${turnRad} ${widthMm}`
      const group = groups.get(key) ?? { slot: cell - 1, row, turnRad, places: [] }
      groups.set(key, group)
      const { xMm, yMm } = cellCentre(pitch, row, at)
      group.places.push([page.x(xMm), page.y(yMm)])
    })
  }
  return [...groups.values()].flatMap((group) => {
    const { widthMm, heightMm } = beadBox(pitch, group.row)
    return slotStamps(lookOf(group.slot), {
      ...group,
      widthMm: widthMm * page.scale,
      heightMm: heightMm * page.scale,
    })
  })
}

/** Beads of one slot as a chart shows them: colour, edge, and the symbol in black or white. */
export function slotStamps(
  look: SlotLook,
  at: Readonly<{
    places: readonly (readonly [number, number])[]
    widthMm: number
    heightMm: number
    turnRad: number
  }>,
): readonly Mark[] {
  const [w, h] = [at.widthMm * 0.93, at.heightMm * 0.93]
  const least = Math.min(w, h)
  const bead: Mark = {
    kind: 'stamps',
    outline: roundedBox(w, h, least * 0.2),
    placesMm: at.places,
    turnRad: at.turnRad,
    fill: look.colourHex,
    stroke: { colour: mixed(look.colourHex, '#16242c', 0.55), widthMm: 0.14 },
  }
  const ink = inkFor(look.colourHex)
  const symbol = slotSymbol(look.index)
  if (symbol.kind === 'letter') {
    const sizePt = Math.min(h * 0.72, (w * 1.35) / symbol.text.length) / MM_PER_PT
    const style = { sizePt, colour: ink, face: 'text-strong', align: 'centre' } as const
    const drop = sizePt * MM_PER_PT * 0.34
    return [bead, ...at.places.map(([x, y]) => text(x, y + drop, symbol.text, style))]
  }
  return [bead, symbolStamp(symbol.outline, at.places, { sizeMm: least * 0.31, ink })]
}

function symbolStamp(
  outline: readonly PathStep[],
  placesMm: readonly (readonly [number, number])[],
  { sizeMm, ink }: Readonly<{ sizeMm: number; ink: string }>,
): Mark {
  const scaled = placedOutline(outline, { scale: sizeMm })
  return { kind: 'stamps', outline: scaled, placesMm, turnRad: 0, fill: ink, stroke: null }
}

/** The number of every tenth column, over its bead in the first row: over nothing it would tell nothing. */
function columnNumbers({ chart, extent, pitch }: PrintedChart, page: OnPage): readonly Mark[] {
  const marks: Mark[] = []
  for (let column = 10; extent.minAt + 2 * (column - 1) <= extent.maxAt; column += 10) {
    const at = extent.minAt + 2 * (column - 1)
    if (at < page.block.at[0] || at >= page.block.at[1]) continue
    if (!hasBead(chart.rows[page.block.rows[0]], at)) continue
    const x = page.x(cellCentre(pitch, 0, at).xMm)
    marks.push(
      text(x, page.top - 1.5, String(column), { sizePt: 6.5, colour: SOFT, align: 'centre' }),
    )
  }
  return marks
}

/** Whether a row has a bead at a place or half a bead beside it. */
function hasBead(row: PrintedChart['chart']['rows'][number] | undefined, at: number): boolean {
  if (row === undefined) return false
  return (row.cells[Math.floor((at - row.start) / 2)] ?? 0) !== 0
}
