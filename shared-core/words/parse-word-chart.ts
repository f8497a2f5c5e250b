import type { Chart, StitchKind } from '../chart/chart.ts'
import { MAX_CELLS, MAX_ROWS } from '../chart/chart-limits.ts'
import { countBeads } from '../chart/count-slots.ts'
import { normaliseChart } from '../chart/normalise-chart.ts'
import { parity, stitchPhase } from '../chart/row-phase.ts'
import { stitchName } from '../chart/stitch-name.ts'
import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import { writeHalves } from './half-number.ts'
import { LastLines, type Side } from './last-lines.ts'
import { cellStep, chartOfLatticeRows, type LatticeRow } from './lattice-rows.ts'
import { isWordLine, type ReadWordLine, readWordLine, type WordFault } from './parse-word-line.ts'
import { placeStep, rowOfLine, type WorkLine } from './work-line.ts'
import { keepLine } from './write-word-chart.ts'

/** What was read from a word chart, and in `notes` what was understood, in plain sentences. */
export type WordReading = Readonly<{ chart: Chart; beads: number; notes: readonly string[] }>

/** Refusals named in one reading. */
const MOST_REFUSALS = 50

/**
 * Reads a word chart typed or pasted: the lines `writeWordChart` writes, and what makers type.
 *
 * Text before the first row is passed over. Lines may stand in any order; each is placed by its own
 * words about its ends, or as `LastLines.impliedFrom` tells. Where no side is given, rows begin by
 * turns at the left and the right, on a loom all at the left. A row that cannot be placed only because
 * the row beside it could not be read is not named: mending that one mends both.
 *
 * @returns The chart, cut as by `normaliseChart`; or every fault with its line: no rows, a row's number
 *   or run that cannot be read, ends that cannot be told or do not agree with the beads counted, a row
 *   out of step with its stitch, beads in a place that is filled already, or a chart past its limits.
 */
export function parseWordChart(
  text: string,
  { stitch }: Readonly<{ stitch: StitchKind }>,
): Result<WordReading, readonly Refusal[]> {
  const builder = new ChartBuilder(stitch)
  const refusals: Refusal[] = []
  let isBegun = false
  for (const [i, line] of text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\n|\r/)
    .entries()) {
    if (line.trim() === '' || /^\s*#/.test(line)) continue
    isBegun ||= isWordLine(line)
    if (!isBegun) continue
    const read = readWordLine(line)
    const fault = 'code' in read ? read : builder.add(read)
    const follows = builder.lose(fault, 'code' in read ? rowsNamed(line) : read.rows)
    if (fault !== undefined && ('code' in read || !follows)) refusals.push(refuse(fault, i + 1))
    if (refusals.length >= MOST_REFUSALS) break
  }
  if (refusals.length > 0) return err(refusals)
  if (!isBegun) return err([noRows()])
  const { chart } = normaliseChart(builder.chart())
  const beads = countBeads(chart)
  const name = stitchName(stitch)
  return ok({
    chart,
    beads,
    notes: [`Read as ${name}: ${beads} beads in ${chart.rows.length} rows.`],
  })
}

/** The row a line begins with, though the rest of it cannot be read. */
function rowsNamed(line: string): readonly number[] {
  const number = /\d{1,7}/.exec(line)?.[0]
  return number === undefined ? [] : [Number(number) - 1]
}

/** Puts lines where their ends say. */
class ChartBuilder {
  readonly #stitch: StitchKind
  readonly #last: LastLines
  readonly #rows = new Map<number, LatticeRow>()
  readonly #lost = new Set<number>()
  #cells = 0
  #anchor: number | undefined
  #side: Side = 'left'

  constructor(stitch: StitchKind) {
    this.#stitch = stitch
    this.#last = new LastLines(stitch)
  }

  /** Adds a line, or says why it cannot be placed. */
  add(read: ReadWordLine): WordFault | undefined {
    const side = read.side ?? this.#side
    const rows = read.rows
    if (rows.length > 1 && this.#stitch !== 'peyote') return onlyPeyote(this.#stitch)
    const places = { rows, side, places: read.cells.length }
    const from = this.#place(read, places)
    if (typeof from !== 'number') return from
    const line = {
      rows,
      side,
      from,
      cells: side === 'left' ? read.cells : read.cells.toReversed(),
    }
    const fault = this.#outOfStep(line) ?? this.#fill(line)
    if (fault !== undefined) return fault
    keepLine(this.#stitch, line, this.#last)
    this.#side = this.#stitch === 'loom' || side === 'right' ? 'left' : 'right'
    return undefined
  }

  /** Remembers the rows of a line with a fault; whether one beside them was lost before. */
  lose(fault: WordFault | undefined, rows: readonly number[]): boolean {
    if (fault === undefined) return false
    const follows = rows.some((row) => this.#lost.has(row - 1) || this.#lost.has(row + 1))
    for (const row of rows) this.#lost.add(row)
    return follows
  }

  chart(): Chart {
    const lattice: (LatticeRow | undefined)[] = []
    for (const [row, cells] of this.#rows) {
      while (lattice.length <= row) lattice.push(undefined)
      lattice[row] = cells
    }
    return chartOfLatticeRows(this.#stitch, lattice)
  }

  #place(
    { marks, cells }: ReadWordLine,
    shape: Readonly<{ rows: readonly number[]; side: Side; places: number }>,
  ): number | WordFault {
    const [row = 0] = shape.rows
    if (marks.begins !== undefined) return marks.begins
    const reference = shape.rows.length > 1 ? undefined : this.#last.reference(row)
    const isTold = marks.left !== undefined || marks.right !== undefined
    if (!isTold || reference === undefined) {
      return this.#last.impliedFrom(shape) ?? endsUnclear(this.#stitch, shape.places)
    }
    const step = cellStep(this.#stitch)
    const width = step * (cells.length - 1)
    // An end that is not spoken of is even with the row below it.
    const right = reference.to + (marks.right ?? 0)
    const from = marks.left === undefined ? right - width : reference.from - marks.left
    const agrees = marks.left === undefined || from + width === right
    const isPartTold = marks.right === undefined && this.#stitch === 'brick'
    return agrees || isPartTold ? from : endsDisagree(shape.places, { from, right, step })
  }

  #outOfStep({ rows, from }: WorkLine): WordFault | undefined {
    const [row = 0] = rows
    if (this.#stitch === 'peyote') {
      if (rows.length > 1) return parity(from) === 0 ? undefined : notInStep(this.#stitch)
      return from % 2 === 0 && parity(from / 2) === parity(row)
        ? undefined
        : notInStep(this.#stitch)
    }
    this.#anchor ??= from + row
    return parity(from) === stitchPhase(this.#stitch, row, this.#anchor)
      ? undefined
      : notInStep(this.#stitch)
  }

  #fill(line: WorkLine): WordFault | undefined {
    this.#cells += line.cells.length
    const last = line.rows.at(-1) ?? 0
    if (this.#cells > MAX_CELLS || last >= MAX_ROWS * (placeStep(this.#stitch, line) / 2)) {
      return tooLarge()
    }
    for (const row of line.rows) {
      const part = rowOfLine(this.#stitch, line, row)
      const earlier = this.#rows.get(row)
      const whole =
        part === undefined || earlier === undefined
          ? (part ?? earlier)
          : joinParts(earlier, part, cellStep(this.#stitch))
      if (whole === 'overlap') return filledTwice(row)
      if (whole !== undefined) this.#rows.set(row, whole)
    }
    return undefined
  }
}

/** Two parts of one row as one, unless both have a bead in the same place. */
function joinParts(a: LatticeRow, b: LatticeRow, step: 2 | 4): LatticeRow | 'overlap' {
  const start = Math.min(a.start, b.start)
  const end = Math.max(a.start + step * a.cells.length, b.start + step * b.cells.length)
  const cells = new Uint16Array((end - start) / step)
  for (const part of [a, b]) {
    const from = (part.start - start) / step
    for (let i = 0; i < part.cells.length; i += 1) {
      const cell = part.cells[i] ?? 0
      if (cell === 0) continue
      if (cells[from + i] !== 0) return 'overlap'
      cells[from + i] = cell
    }
  }
  return { start, cells }
}

function onlyPeyote(stitch: StitchKind): WordFault {
  return {
    code: 'word-row-unknown',
    found: 'two rows together',
    next: `Only peyote is strung two rows at once; in ${stitchName(stitch)} give each row a line.`,
  }
}

function endsUnclear(stitch: StitchKind, places: number): WordFault {
  const example =
    stitch === 'brick' ? '[increase ½ at left, decrease 1½ at right]' : '[decrease 1 at left]'
  return {
    code: 'word-ends-unclear',
    found: `${places} beads, and no word of where they lie beside the row they are worked on`,
    next: `Say how far the ends reach, such as ${example}.`,
  }
}

function endsDisagree(
  places: number,
  { from, right, step }: Readonly<{ from: number; right: number; step: number }>,
): WordFault {
  const room = Math.max(0, (right - from) / step + 1)
  return {
    code: 'word-ends-disagree',
    found: `${places} beads where the ends leave room for ${writeHalves(Math.round(2 * room))}`,
    next: 'Count the row again, or correct the increase or decrease at its ends.',
  }
}

function notInStep(stitch: StitchKind): WordFault {
  return {
    code: 'word-row-out-of-step',
    found: 'a row out of step with its neighbours',
    next:
      stitch === 'brick'
        ? 'Brick rows lie half a bead out of step: ends increase or decrease by ½, 1½, 2½ and so on.'
        : `In ${stitchName(stitch)} ends move by whole beads, in peyote by whole columns that suit the row.`,
  }
}

function filledTwice(row: number): WordFault {
  return {
    code: 'word-row-twice',
    found: `beads where row ${row + 1} has beads already`,
    next: 'Give each row one line, or parts that do not overlap.',
  }
}

function tooLarge(): WordFault {
  return {
    code: 'word-chart-too-large',
    found: 'a chart past its limits',
    next: `A chart holds at most ${MAX_CELLS} cells and ${MAX_ROWS} rows.`,
  }
}

function refuse({ code, found, next }: WordFault, line: number): Refusal {
  return { code, message: `Line ${line}: found ${found}.`, next, line }
}

function noRows(): Refusal {
  return {
    code: 'word-empty',
    message: 'The text has no rows.',
    next: 'A word chart has lines such as Row 1 (L): (3)A, (2)B.',
  }
}
