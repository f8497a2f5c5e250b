import type { Refusal } from '../../refusal.ts'
import { err, ok, type Result } from '../../result.ts'
import { type BeadExtent, beadExtent } from '../bead-extent.ts'
import type { CellRef, Chart, ChartRow, StitchKind } from '../chart.ts'
import { MAX_CELLS, MAX_COLUMNS, MAX_ROWS } from '../chart-limits.ts'
import { upTo } from '../lattice-step.ts'
import { parity } from '../row-phase.ts'
import { stitchName } from '../stitch-name.ts'
import { isOddColumn } from '../stitch-pitch.ts'
import { type ChartEdit, editTo, noEdit } from './chart-edit.ts'

/** The way a chart is turned, as seen from the front. */
export type Turn = 'clockwise' | 'anticlockwise'

/**
 * Turns a chart a quarter: brick becomes peyote and peyote brick (the same beads, holes the other way),
 * square stitch, loom work and right-angle weave stay what they are.
 *
 * @returns The edit; or `turn-not-possible` for ladder stitch and herringbone, whose rows stand on each
 *   other; or `turn-too-large` when blanks would make the turned chart pass a chart's limits.
 */
export function quarterTurn(chart: Chart, turn: Turn): Result<ChartEdit, Refusal> {
  const stitch = turnedStitch(chart.stitch)
  if (stitch === undefined) return err(notPossible(chart.stitch))
  const extent = beadExtent(chart.rows)
  if (extent === undefined) return ok(noEdit(chart))
  const place = placing(chart, extent, turn)
  const rows = blankRows(chart.rows, place)
  if (rows === undefined) return err(tooLarge())
  eachBead(chart.rows, (row, at, cell) => {
    const to = place(row, at)
    const line = rows[to.row]
    if (line !== undefined) line.cells[(to.at - line.start) / 2] = cell
  })
  return ok(editTo(chart, { stitch, rows }))
}

function turnedStitch(stitch: StitchKind): StitchKind | undefined {
  switch (stitch) {
    case 'brick':
      return 'peyote'
    case 'peyote':
      return 'brick'
    case 'square':
    case 'loom':
    case 'right-angle-weave':
      return stitch
    default:
      return undefined
  }
}

type Placing = (row: number, at: number) => CellRef

function placing(chart: Chart, extent: BeadExtent, turn: Turn): Placing {
  const isClockwise = turn === 'clockwise'
  switch (chart.stitch) {
    case 'brick':
      return brickToPeyote(chart.rows, extent, isClockwise)
    case 'peyote':
      return peyoteToBrick(chart.rows, extent, isClockwise)
    case 'right-angle-weave':
      return turnRings(extent, isClockwise)
    default:
      return turnGrid(extent, isClockwise)
  }
}

function turnGrid({ firstRow, lastRow, minAt, maxAt }: BeadExtent, isClockwise: boolean): Placing {
  return isClockwise
    ? (row, at) => ({ row: (at - minAt) / 2, at: 2 * (lastRow - row) })
    : (row, at) => ({ row: (maxAt - at) / 2, at: 2 * (row - firstRow) })
}

/** Rows and positions of lying and standing beads change places; even bounds keep each kind in its rows. */
function turnRings({ firstRow, lastRow, minAt, maxAt }: BeadExtent, isClockwise: boolean): Placing {
  const [left, right] = [minAt - parity(minAt), upTo(maxAt, 2)]
  const [top, bottom] = [firstRow - parity(firstRow), upTo(lastRow, 2)]
  return isClockwise
    ? (row, at) => ({ row: at - left, at: bottom - row })
    : (row, at) => ({ row: right - at, at: row - top })
}

/** A row becomes a column, its position the height in half rows; odd columns must begin at odd heights. */
function brickToPeyote(
  rows: readonly ChartRow[],
  { firstRow, lastRow, minAt, maxAt }: BeadExtent,
  isClockwise: boolean,
): Placing {
  const anchor = parity((rows[firstRow]?.start ?? 0) + firstRow)
  const slip = isClockwise ? parity(lastRow + anchor + minAt) : parity(maxAt + anchor + firstRow)
  return (row, at) => {
    const column = isClockwise ? lastRow - row : row - firstRow
    const height = (isClockwise ? at - minAt : maxAt - at) + slip
    return { row: (height - parity(column)) / 2, at: 2 * column }
  }
}

/** A column becomes a row, its height in half rows the position. */
function peyoteToBrick(
  rows: readonly ChartRow[],
  { minAt, maxAt }: BeadExtent,
  isClockwise: boolean,
): Placing {
  let [highest, lowest] = [Infinity, -Infinity]
  eachBead(rows, (row, at) => {
    highest = Math.min(highest, halfRow(row, at))
    lowest = Math.max(lowest, halfRow(row, at))
  })
  return isClockwise
    ? (row, at) => ({ row: (at - minAt) / 2, at: lowest - halfRow(row, at) })
    : (row, at) => ({ row: (maxAt - at) / 2, at: halfRow(row, at) - highest })
}

function halfRow(row: number, at: number): number {
  return 2 * row + (isOddColumn(at) ? 1 : 0)
}

function eachBead(
  rows: readonly ChartRow[],
  visit: (row: number, at: number, cell: number) => void,
): void {
  rows.forEach(({ start, cells }, row) => {
    for (let i = 0; i < cells.length; i += 1) {
      const cell = cells[i] ?? 0
      if (cell !== 0) visit(row, start + 2 * i, cell)
    }
  })
}

/** The turned rows with room for their beads, or `undefined` where they pass the limits. */
function blankRows(rows: readonly ChartRow[], place: Placing): ChartRow[] | undefined {
  const ends: { from: number; to: number }[] = []
  let isTooFar = false
  eachBead(rows, (fromRow, fromAt) => {
    const { row, at } = place(fromRow, fromAt)
    isTooFar ||= row >= MAX_ROWS || at >= 2 * MAX_COLUMNS
    if (isTooFar) return
    while (ends.length <= row) ends.push({ from: Infinity, to: -Infinity })
    const end = ends[row]
    if (end === undefined) return
    end.from = Math.min(end.from, at)
    end.to = Math.max(end.to, at + 2)
  })
  const cells = ends.reduce((sum, { from, to }) => sum + Math.max(0, (to - from) / 2), 0)
  if (isTooFar || cells > MAX_CELLS) return undefined
  return ends.map(({ from, to }) =>
    from > to
      ? { start: 0, cells: new Uint16Array(0) }
      : { start: from, cells: new Uint16Array((to - from) / 2) },
  )
}

function notPossible(stitch: StitchKind): Refusal {
  return {
    code: 'turn-not-possible',
    message: `A quarter turn of ${stitchName(stitch)} is no ${stitchName(stitch)}.`,
    next: 'Turn it half round, or mirror it.',
  }
}

function tooLarge(): Refusal {
  return {
    code: 'turn-too-large',
    message: 'Turned a quarter, this chart would be larger than a chart can be.',
    next: `A chart holds at most ${MAX_CELLS} cells, ${MAX_COLUMNS} columns and ${MAX_ROWS} rows; cut it into panels first.`,
  }
}
