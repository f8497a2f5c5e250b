import type { BeadIndex } from '../chart/bead-index.ts'
import type { Chart, StitchKind } from '../chart/chart.ts'
import { countBeads } from '../chart/count-slots.ts'
import { parity } from '../chart/row-phase.ts'
import { stitchName } from '../chart/stitch-name.ts'
import { writeHalves } from './half-number.ts'
import { LastLines, type LineEnds, type Side } from './last-lines.ts'
import { pickedOrder } from './picked-order.ts'
import { plainOrder, type WorkStart } from './plain-order.ts'
import { writeWordRuns } from './word-runs.ts'
import { endsOfRow, placeStep, rowOfLine, type WorkLine } from './work-line.ts'

/** What a word chart is written from, beside its chart. */
export type WordChartOptions = WorkStart &
  Readonly<{
    /** A route's beads in the order they are picked up; the lines follow it, and `startRow` and `startSide` are not asked. */
    worked?: Readonly<{ index: BeadIndex; picks: Iterable<number> }>
    /** How brick begins: with a ladder row, which is the rule, or with two beads side by side. */
    start?: 'ladder' | 'two-bead'
  }>

/** One line of a word chart as written, the rows it tells (numbered as printed, from 1) and the side it begins at. */
export type WordLine = Readonly<{ text: string; rows: readonly number[]; side: Side }>

/** A word chart: sentences that say how to read it, then its lines in the order of work. */
export type WordChart = Readonly<{ intro: readonly string[]; lines: readonly WordLine[] }>

/**
 * Writes a chart row by row in the order of work, each row in the direction it is worked.
 *
 * A line says its row (numbered from the top), the side it begins at, how far its ends reach past or
 * stay short of the row it hangs on, and its runs: `Row 9 (R) [decrease ½ at both ends]: (1)A,
 * (3)D, (1)A`. Brick always says its ends, other stitches where they are not as wide as
 * the row before. A place without a bead is a `gap`; a row in several parts says so. Peyote begins
 * with its first two rows strung together and counts half rows. `parseWordChart` reads the lines back
 * to the same chart, cut as by `normaliseChart`.
 *
 * @source Trade conventions: runs as a count in brackets and the slot's letter; peyote's `Rows 1 and 2`
 *   strung together; the direction stated, because sheets differ in what L and R mean.
 */
export function writeWordChart(chart: Chart, options: WordChartOptions = {}): WordChart {
  const order =
    options.worked === undefined
      ? plainOrder(chart, options)
      : pickedOrder(chart.stitch, options.worked.index, options.worked.picks)
  const last = new LastLines(chart.stitch)
  const told = new Set<number>()
  const lines = order.map((line, number) => {
    const text = writeLine(chart.stitch, line, { last, told, options, isFirst: number === 0 })
    keepLine(chart.stitch, line, last)
    for (const row of line.rows) told.add(row)
    return { text, rows: line.rows.map((row) => row + 1), side: line.side }
  })
  return { intro: lines.length === 0 ? [] : intro(chart, lines), lines }
}

/** A word chart as text: the intro, an empty line, then a line a row. */
export function wordChartText({ intro: sentences, lines }: WordChart): string {
  return `${[...sentences, '', ...lines.map(({ text }) => text)].join('\n')}\n`
}

/** Keeps where a line's rows begin and end, so that the next lines can be told by it. */
export function keepLine(stitch: StitchKind, line: WorkLine, last: LastLines): void {
  for (const row of line.rows) {
    const part = rowOfLine(stitch, line, row)
    if (part !== undefined) last.keep(row, endsOfRow(stitch, part))
  }
}

type Writing = Readonly<{
  last: LastLines
  /** Rows that have a line already. */
  told: ReadonlySet<number>
  options: WordChartOptions
  isFirst: boolean
}>

function writeLine(stitch: StitchKind, line: WorkLine, writing: Writing): string {
  const { rows, side, cells } = line
  const numbers = rows.map((row) => row + 1).join(' and ')
  const role = rowRole(stitch, line, writing)
  const marks = endMarks(stitch, line, writing.last)
  const runs = writeWordRuns(side === 'left' ? cells : cells.toReversed())
  const head = `${rows.length > 1 ? 'Rows' : 'Row'} ${numbers}${role} (${side === 'left' ? 'L' : 'R'})`
  return `${head}${marks === '' ? '' : ` [${marks}]`}: ${runs}${splitRemark(line)}`
}

function rowRole(
  stitch: StitchKind,
  { rows }: WorkLine,
  { told, options, isFirst }: Writing,
): string {
  const [row = 0] = rows
  if (told.has(row)) return ', another part'
  if (rows.length > 1) return ', strung together'
  if (stitch === 'right-angle-weave') return parity(row) === 0 ? ', lying' : ', standing'
  const hasLadder = stitch === 'brick' || stitch === 'ladder' || stitch === 'herringbone'
  if (!isFirst || !hasLadder) return ''
  return stitch === 'brick' && options.start === 'two-bead' ? ', start' : ', ladder'
}

function endMarks(stitch: StitchKind, line: WorkLine, last: LastLines): string {
  const [row = 0] = line.rows
  const ends: LineEnds = {
    from: line.from,
    to: line.from + placeStep(stitch, line) * (line.cells.length - 1),
  }
  const reference = line.rows.length > 1 ? undefined : last.reference(row)
  const shape = { rows: line.rows, side: line.side, places: line.cells.length }
  const isImplied = last.impliedFrom(shape) === line.from
  if (reference === undefined)
    return isImplied ? '' : `begins ${writeHalves(line.from)} from the left`
  if (isImplied && stitch !== 'brick') return ''
  const [left, right] = [reference.from - ends.from, ends.to - reference.to]
  if (left === right) return left === 0 ? 'even at both ends' : endMark(left, 'both ends')
  return [endMark(left, 'left'), endMark(right, 'right')].filter((mark) => mark !== '').join(', ')
}

function endMark(halves: number, place: Side | 'both ends'): string {
  if (halves === 0) return ''
  return `${halves > 0 ? 'increase' : 'decrease'} ${writeHalves(Math.abs(halves))} at ${place}`
}

function splitRemark({ cells }: WorkLine): string {
  let parts = 0
  cells.forEach((cell, i) => {
    if (cell !== 0 && (i === 0 || cells[i - 1] === 0)) parts += 1
  })
  return parts > 1 ? ` — in ${parts} parts` : ''
}

function intro(chart: Chart, lines: readonly WordLine[]): readonly string[] {
  const { stitch } = chart
  const name = stitchName(stitch)
  const beads = countBeads(chart)
  const rowWord = stitch === 'peyote' ? 'rows, two to each bead in height' : 'rows'
  const rows = new Set(lines.flatMap((line) => line.rows)).size
  const unit = stitch === 'peyote' ? 'columns' : 'beads'
  return [
    `${name[0]?.toUpperCase()}${name.slice(1)}: ${beads} beads in ${rows} ${rowWord}, numbered from the top.`,
    '(L) begins at the left, (R) at the right, seen from the front. Lines stand in the order of work.',
    `Increase and decrease say how many ${unit} the row reaches past the row it is worked on, or stays short of it.`,
  ]
}
