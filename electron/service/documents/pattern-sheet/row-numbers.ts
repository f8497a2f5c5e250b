import { cellCentre, isOddColumn } from '../../../../shared-core/chart/stitch-pitch.ts'
import { type PathStep, polygon } from '../../../../shared-core/colour/path-step.ts'
import type { Mark } from '../draw-list.ts'
import type { OnPage } from './chart-marks.ts'
import type { PrintedChart } from './printed-chart.ts'
import { EDGE, INK, SOFT, TIDE, text } from './sheet-style.ts'

const ARROW: readonly PathStep[] = polygon([
  -1.3, -0.16, 0.2, -0.16, 0.2, -0.75, 1.3, 0, 0.2, 0.75, 0.2, 0.16, -1.3, 0.16,
])

/** Numbers of the rows as they are worked, each at the side its row begins at, with an arrow into the row. */
export function rowNumbers(printed: PrintedChart, page: OnPage): readonly Mark[] {
  const { chart, pitch } = printed
  const marks: Mark[] = []
  const arrows = { left: [] as Place[], right: [] as Place[] }
  for (let row = page.block.rows[0]; row < page.block.rows[1]; row += 1) {
    for (const odd of chart.stitch === 'peyote' ? [false, true] : [false]) {
      const worked = chart.stitch === 'peyote' ? 2 * row + (odd ? 1 : 0) : row
      const y = page.y(cellCentre(pitch, row, odd ? 2 : 0).yMm)
      const known = printed.sideOfRow.get(worked)
      const side = known ?? 'left'
      marks.push(numberMark(worked + 1, side, y, page))
      if (known === undefined) continue
      arrows[side].push([side === 'left' ? page.left - 2.6 : page.right + 2.6, y])
      marks.push(
        ...guide(printed, page, { row, odd: chart.stitch === 'peyote' ? odd : undefined, side, y }),
      )
    }
  }
  return [...marks, ...arrowMarks(arrows)]
}

type Place = readonly [number, number]

function numberMark(number: number, side: 'left' | 'right', y: number, page: OnPage): Mark {
  const isTenth = number % 10 === 0
  return text(side === 'left' ? page.left - 4.3 : page.right + 4.3, y + 0.82, String(number), {
    sizePt: 6.5,
    face: isTenth ? 'text-strong' : 'text',
    colour: isTenth ? INK : SOFT,
    align: side === 'left' ? 'right' : 'left',
  })
}

function arrowMarks({ left, right }: Readonly<{ left: Place[]; right: Place[] }>): readonly Mark[] {
  const stamp = (placesMm: readonly Place[], turnRad: number): readonly Mark[] =>
    placesMm.length === 0
      ? []
      : [{ kind: 'stamps', outline: ARROW, placesMm, turnRad, fill: TIDE, stroke: null }]
  return [...stamp(left, 0), ...stamp(right, Math.PI)]
}

type RowEnd = Readonly<{
  row: number
  /** Which half row of peyote; absent in other stitches. */
  odd: boolean | undefined
  side: 'left' | 'right'
  y: number
}>

/** A hairline from a number to a row that begins far from the edge. */
function guide({ chart, pitch }: PrintedChart, page: OnPage, end: RowEnd): readonly Mark[] {
  const line = chart.rows[end.row]
  if (line === undefined) return []
  const ats = [...line.cells.keys()]
    .filter((i) => line.cells[i] !== 0)
    .map((i) => line.start + 2 * i)
    .filter((at) => at >= page.block.at[0] && at < page.block.at[1])
    .filter((at) => end.odd === undefined || isOddColumn(at) === end.odd)
  const at = end.side === 'left' ? ats[0] : ats.at(-1)
  if (at === undefined) return []
  const centre = page.x(cellCentre(pitch, end.row, at).xMm)
  const reach = pitch.halfMm * page.scale + 0.8
  const [from, to] =
    end.side === 'left' ? [page.left - 0.8, centre - reach] : [centre + reach, page.right + 0.8]
  if (to - from < 4 * pitch.halfMm * page.scale) return []
  return [{ kind: 'line', fromMm: [from, end.y], toMm: [to, end.y], widthMm: 0.1, colour: EDGE }]
}
