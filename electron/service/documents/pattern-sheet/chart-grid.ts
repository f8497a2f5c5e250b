import { cellCentre, isOddColumn } from '../../../../shared-core/chart/stitch-pitch.ts'
import type { PathStep } from '../../../../shared-core/colour/path-step.ts'
import type { Mark } from '../draw-list.ts'
import type { OnPage } from './chart-marks.ts'
import type { PrintedChart } from './printed-chart.ts'

/** How far a line reaches past the beads, mm. */
const PAST_MM = 1.2

/** A heavier line after every tenth row and column, running between the beads. */
export function gridLines(printed: PrintedChart, page: OnPage): readonly Mark[] {
  return [...rowLines(printed, page), ...columnLines(printed, page)]
}

/** Peyote counts two rows to a chart row, so its tenth comes after five. */
function rowLines({ chart, extent, pitch }: PrintedChart, page: OnPage): readonly Mark[] {
  const every = chart.stitch === 'peyote' ? 5 : 10
  const marks: Mark[] = []
  const [from, to] = page.block.rows
  for (let row = from; row <= to; row += 1) {
    if (row % every !== 0 || row <= extent.firstRow || row > extent.lastRow) continue
    const y = cellCentre(pitch, row, 0).yMm - pitch.downMm / 2
    marks.push(...heavyLine(rowLine(y, { pitch }, page)))
  }
  return marks
}

function rowLine(
  yMm: number,
  { pitch }: Pick<PrintedChart, 'pitch'>,
  page: OnPage,
): readonly (readonly [number, number])[] {
  const { left, right, block } = page
  if (pitch.dropMm === 0) {
    return [
      [left - PAST_MM, page.y(yMm)],
      [right + PAST_MM, page.y(yMm)],
    ]
  }
  // In peyote the line steps down with every odd column.
  const points: (readonly [number, number])[] = []
  const half = pitch.halfMm
  for (let at = block.at[0]; at < block.at[1]; at += 2) {
    const middle = pitch.leftMm + at * half
    const y = page.y(yMm + (isOddColumn(at) ? pitch.dropMm : 0))
    const [x1, x2] = [page.x(middle - half), page.x(middle + half)]
    points.push([at === block.at[0] ? left - PAST_MM : x1, y])
    points.push([at + 2 >= block.at[1] ? right + PAST_MM : x2, y])
  }
  return points
}

function columnLines(printed: PrintedChart, page: OnPage): readonly Mark[] {
  const { chart, extent } = printed
  if (chart.stitch === 'right-angle-weave') return []
  const marks: Mark[] = []
  for (let at = extent.minAt + 20; at <= extent.maxAt; at += 20) {
    if (at < page.block.at[0] || at > page.block.at[1]) continue
    marks.push(...heavyLine(columnLine(printed, page, at)))
  }
  return marks
}

/** Left of a position; in brick it steps with the rows that lie half a bead out of step. */
function columnLine(
  { chart, pitch }: PrintedChart,
  page: OnPage,
  at: number,
): readonly (readonly [number, number])[] {
  const points: (readonly [number, number])[] = []
  const [from, to] = page.block.rows
  for (let row = from; row < to; row += 1) {
    const start = chart.rows[row]?.start ?? at
    const isOut = chart.stitch === 'brick' && (start - at) % 2 !== 0
    const x = page.x(pitch.leftMm + (at + (isOut ? 1 : 0) - 1) * pitch.halfMm)
    const middle = cellCentre(pitch, row, 0).yMm
    const [y1, y2] = [page.y(middle - pitch.downMm / 2), page.y(middle + pitch.downMm / 2)]
    points.push([x, row === from ? page.top - PAST_MM : y1])
    points.push([x, row === to - 1 ? page.bottom + PAST_MM : y2])
  }
  return points
}

/** Ink on a casing of paper, so that it is seen between dark beads too. */
function heavyLine(points: readonly (readonly [number, number])[]): readonly Mark[] {
  const outline = points.map(([x, y], i): PathStep => [i === 0 ? 'M' : 'L', x, y])
  const line = (colour: string, widthMm: number): Mark => ({
    kind: 'stamps',
    outline,
    placesMm: [[0, 0]],
    turnRad: 0,
    fill: null,
    stroke: { colour, widthMm },
  })
  return [line('#ffffff', 0.75), line('#16242c', 0.34)]
}
