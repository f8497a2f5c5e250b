import type { Chart, ChartRow } from '../chart.ts'
import { parity } from '../row-phase.ts'
import { type ChartEdit, editTo, NO_SHIFT } from './chart-edit.ts'

/** `left-right` swaps the sides, `top-bottom` turns it upside down as in water, `both` is half a turn. */
export type Mirror = 'left-right' | 'top-bottom' | 'both'

/**
 * Mirrors a chart in its own middle, or turns it half round; twice gives the chart again.
 *
 * The mirrored work is a true image: where the stitch's columns are not alike (peyote's odd columns
 * hang lower, herringbone's beads lean in pairs, right-angle weave's beads lie and stand by turns)
 * the image may come to lie one column or one row further.
 */
export function mirrorChart(chart: Chart, mirror: Mirror): ChartEdit {
  const rows = mirror === 'left-right' ? chart.rows : upsideDown(chart)
  const extent = positions(chart.rows)
  if (extent === undefined) return editTo(chart, { stitch: chart.stitch, rows })
  const mirrored =
    mirror === 'top-bottom'
      ? moved(rows, columnChange(chart, extent))
      : reflected(rows, reflectionSum(chart, mirror, extent))
  return editTo(chart, { stitch: chart.stitch, rows: mirrored }, NO_SHIFT)
}

type Positions = Readonly<{ first: number; last: number }>

function positions(rows: readonly ChartRow[]): Positions | undefined {
  let [first, last] = [Infinity, -Infinity]
  for (const { start, cells } of rows) {
    if (cells.length === 0) continue
    first = Math.min(first, start)
    last = Math.max(last, start + 2 * (cells.length - 1))
  }
  return first > last ? undefined : { first, last }
}

/**
 * What a position and its image add up to: first plus last where the stitch allows, else one column
 * more, or less where the first column is an odd one, which is what makes the second image fall back
 * on the chart.
 */
function reflectionSum({ stitch }: Chart, mirror: Mirror, { first, last }: Positions): number {
  const sum = first + last
  switch (stitch) {
    case 'peyote': {
      // Left and right keep a column's height; half a turn makes a low column a high one.
      const fits = parity(sum / 2) === (mirror === 'both' ? 1 : 0)
      return fits ? sum : sum + 2 * onwards(first / 2)
    }
    case 'herringbone':
      return parity(sum / 2) === 1 ? sum : sum + 2 * onwards(first / 2)
    case 'right-angle-weave':
      return parity(sum) === 0 ? sum : sum + onwards(first)
    default:
      return sum
  }
}

/** Peyote upside down: a high column becomes a low one, so all move by one column. */
function columnChange({ stitch }: Chart, { first }: Positions): number {
  return stitch === 'peyote' ? 2 * onwards(first / 2) : 0
}

/** 1 from an even place, -1 from an odd one: there and back again. */
function onwards(place: number): number {
  return parity(Math.floor(place)) === 0 ? 1 : -1
}

function reflected(rows: readonly ChartRow[], sum: number): readonly ChartRow[] {
  return rows.map((row) =>
    row.cells.length === 0
      ? row
      : { start: sum - row.start - 2 * (row.cells.length - 1), cells: row.cells.toReversed() },
  )
}

function moved(rows: readonly ChartRow[], by: number): readonly ChartRow[] {
  if (by === 0) return rows
  return rows.map((row) =>
    row.cells.length === 0 ? row : { start: row.start + by, cells: row.cells },
  )
}

function upsideDown({ stitch, rows }: Chart): readonly ChartRow[] {
  if (stitch !== 'right-angle-weave') return rows.toReversed()
  const first = rows.findIndex(({ cells }) => cells.length > 0)
  const last = rows.findLastIndex(({ cells }) => cells.length > 0)
  if (first < 0) return rows
  const middle = rows.slice(first, last + 1).toReversed()
  const turned = [...rows.slice(0, first), ...middle, ...rows.slice(last + 1)]
  // Rows of lying beads must stay even ones.
  if (parity(first + last) === 0) return turned
  return parity(first) === 0
    ? [{ start: 1, cells: new Uint16Array(0) }, ...turned]
    : turned.slice(1)
}
