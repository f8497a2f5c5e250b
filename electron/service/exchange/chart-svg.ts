import { assertNever } from '../../../shared-core/assert.ts'
import { type PathStep, pathText, placedOutline } from '../../../shared-core/colour/path-step.ts'
import { type Mark, MM_PER_PT } from '../documents/draw-list.ts'
import { blockMarks } from '../documents/pattern-sheet/chart-marks.ts'
import { COLUMN_LABELS_MM, largestBox } from '../documents/pattern-sheet/chart-plan.ts'
import type { PrintedChart } from '../documents/pattern-sheet/printed-chart.ts'

/** Beside the beads, for row numbers and arrows, mm. */
const GUTTER_MM = 12
const EDGE_MM = 3

/**
 * A whole chart as an SVG text in mm: beads in their colours with their symbols, rows and columns numbered.
 *
 * @param scale - Times life size.
 */
export function chartSvg(printed: PrintedChart, scale: number): string {
  const { extent, pitch } = printed
  const box = largestBox(pitch)
  const across = (extent.maxAt - extent.minAt) * pitch.halfMm + box.widthMm
  const down = (extent.lastRow - extent.firstRow) * pitch.downMm + pitch.dropMm + box.heightMm
  const width = across * scale + 2 * (GUTTER_MM + EDGE_MM)
  const height = down * scale + COLUMN_LABELS_MM + 2 * EDGE_MM
  const block = {
    rows: [extent.firstRow, extent.lastRow + 1],
    at: [extent.minAt, extent.maxAt + 1],
    xMm: EDGE_MM,
    yMm: EDGE_MM,
  } as const
  const marks = blockMarks(printed, block, scale, GUTTER_MM)
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(width)}mm" height="${mm(height)}mm" viewBox="0 0 ${mm(width)} ${mm(height)}" font-family="'Atkinson Hyperlegible Next', sans-serif">`,
    `<title>${escaped(printed.name)}</title>`,
    '<rect width="100%" height="100%" fill="#ffffff"/>',
    ...marks.map(markSvg),
    '</svg>\n',
  ].join('\n')
}

function markSvg(mark: Mark, number: number): string {
  switch (mark.kind) {
    case 'text': {
      const anchor = { left: 'start', right: 'end', centre: 'middle' }[mark.align]
      const weight = mark.face === 'text' ? '' : ' font-weight="700"'
      const size = mm(mark.sizePt * MM_PER_PT)
      return `<text x="${mm(mark.xMm)}" y="${mm(mark.yMm)}" font-size="${size}" fill="${mark.colour}" text-anchor="${anchor}"${weight}>${escaped(mark.text)}</text>`
    }
    case 'line': {
      const [[x1, y1], [x2, y2]] = [mark.fromMm, mark.toMm]
      return `<path d="M${mm(x1)} ${mm(y1)}L${mm(x2)} ${mm(y2)}" stroke="${mark.colour}" stroke-width="${mm(mark.widthMm)}"/>`
    }
    case 'stamps':
      return stampsSvg(mark, `stamp${number}`)
    case 'box':
    case 'modules':
      throw new Error(`expected a chart's marks, got a ${mark.kind}`)
    default:
      return assertNever(mark)
  }
}

function stampsSvg(mark: Extract<Mark, { kind: 'stamps' }>, id: string): string {
  const { placesMm, stroke } = mark
  const outline = placedOutline(mark.outline, { scale: 1, turnRad: mark.turnRad })
  const edge =
    stroke === null
      ? ''
      : ` stroke="${stroke.colour}" stroke-width="${mm(stroke.widthMm)}" stroke-linejoin="round"`
  const paint = `fill="${mark.fill ?? 'none'}"${edge}`
  const path = (steps: readonly PathStep[]) => `<path d="${pathText(steps)}"`
  const [only] = placesMm
  if (placesMm.length === 1 && only !== undefined) {
    const at = placedOutline(outline, { scale: 1, toX: only[0], toY: only[1] })
    return `${path(at)} ${paint}/>`
  }
  const uses = placesMm.map(([x, y]) => `<use href="#${id}" x="${mm(x)}" y="${mm(y)}"/>`)
  return `<defs>${path(outline)} id="${id}"/></defs><g ${paint}>${uses.join('')}</g>`
}

function mm(value: number): string {
  return String(Number(value.toFixed(3)))
}

function escaped(words: string): string {
  return words.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`)
}
