import type { ChartRow } from '../../../../shared-core/chart/chart.ts'
import { cellCentre, isOddColumn } from '../../../../shared-core/chart/stitch-pitch.ts'
import type { PathStep } from '../../../../shared-core/colour/path-step.ts'
import type { Mark } from '../draw-list.ts'
import type { OnPage } from './chart-marks.ts'
import type { PrintedChart } from './printed-chart.ts'

/** A column's line over fewer rows than this is a stub that guides nobody. */
const LEAST_ROWS = 3
/** How far a row's line reaches past the beads, mm. */
const PAST_MM = 1.2

/** A heavier line after every tenth row and column, running between the beads. */
export function gridLines(printed: PrintedChart, page: OnPage): readonly Mark[] {
  return [...rowLines(printed, page), ...columnLines(printed, page)]
}

type Point = readonly [x: number, y: number]

/** Peyote counts two rows to a chart row, so its tenth comes after five. */
function rowLines(printed: PrintedChart, page: OnPage): readonly Mark[] {
  const { chart, extent } = printed
  const every = chart.stitch === 'peyote' ? 5 : 10
  const marks: Mark[] = []
  const [from, to] = page.block.rows
  for (let row = from; row <= to; row += 1) {
    if (row % every !== 0 || row <= extent.firstRow || row > extent.lastRow) continue
    const ends = endsBeside(printed, page, row)
    if (ends !== undefined) marks.push(...heavyLine(rowLine(printed, page, { row, ...ends })))
  }
  return marks
}

type Ends = Readonly<{ from: number; to: number }>

/** How far the rows above and below a line reach together, in the block's positions. */
function endsBeside({ chart }: PrintedChart, { block }: OnPage, row: number): Ends | undefined {
  let [from, to] = [Infinity, -Infinity]
  for (const line of [chart.rows[row - 1], chart.rows[row]]) {
    line?.cells.forEach((cell, i) => {
      const at = line.start + 2 * i
      if (cell === 0 || at < block.at[0] || at >= block.at[1]) return
      from = Math.min(from, at)
      to = Math.max(to, at)
    })
  }
  return from > to ? undefined : { from, to }
}

function rowLine(
  { pitch }: PrintedChart,
  page: OnPage,
  { row, from, to }: Ends & Readonly<{ row: number }>,
): readonly Point[] {
  const half = pitch.halfMm
  const top = cellCentre(pitch, row, 0).yMm - pitch.downMm / 2
  const left = page.x(pitch.leftMm + (from - 1) * half) - PAST_MM
  const right = page.x(pitch.leftMm + (to + 1) * half) + PAST_MM
  if (pitch.dropMm === 0) {
    const y = page.y(top)
    return [
      [left, y],
      [right, y],
    ]
  }
  // In peyote the line steps down with every odd column.
  const points: Point[] = []
  for (let at = from; at <= to; at += 2) {
    const middle = pitch.leftMm + at * half
    const y = page.y(top + (isOddColumn(at) ? pitch.dropMm : 0))
    points.push([at === from ? left : page.x(middle - half), y])
    points.push([at === to ? right : page.x(middle + half), y])
  }
  return points
}

function columnLines(printed: PrintedChart, page: OnPage): readonly Mark[] {
  const { chart, extent } = printed
  if (chart.stitch === 'right-angle-weave') return []
  const marks: Mark[] = []
  for (let at = extent.minAt + 20; at <= extent.maxAt; at += 20) {
    if (at < page.block.at[0] || at > page.block.at[1]) continue
    for (const points of columnLine(printed, page, at)) marks.push(...heavyLine(points))
  }
  return marks
}

/** Left of a position, where rows have beads at both sides; in brick it steps with the rows out of step. */
function columnLine(
  { chart, pitch }: PrintedChart,
  page: OnPage,
  at: number,
): readonly (readonly Point[])[] {
  const stretches: Point[][] = []
  let isOn = false
  const [from, to] = page.block.rows
  for (let row = from; row < to; row += 1) {
    const line = chart.rows[row]
    const isOut = chart.stitch === 'brick' && ((line?.start ?? at) - at) % 2 !== 0
    const right = at + (isOut ? 1 : 0)
    const isBetween = hasBead(line, right - 2) && hasBead(line, right)
    if (isBetween && !isOn) stretches.push([])
    isOn = isBetween
    if (!isBetween) continue
    const x = page.x(pitch.leftMm + (right - 1) * pitch.halfMm)
    const middle = cellCentre(pitch, row, right).yMm
    const half = pitch.downMm / 2
    stretches.at(-1)?.push([x, page.y(middle - half)], [x, page.y(middle + half)])
  }
  return stretches.filter((points) => points.length >= 2 * LEAST_ROWS)
}

function hasBead(line: ChartRow | undefined, at: number): boolean {
  return line !== undefined && (line.cells[(at - line.start) / 2] ?? 0) !== 0
}

/** Ink on a casing of paper, so that it is seen between dark beads too. */
function heavyLine(points: readonly Point[]): readonly Mark[] {
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
