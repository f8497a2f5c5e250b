import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import { formatCount, formatCounted } from '../units/format-number.ts'
import { type Chart, type ChartRow, type StitchKind, slotLabel } from './chart.ts'
import { MAX_CELLS, MAX_COLUMNS, MAX_ROWS } from './chart-limits.ts'
import { countSlots } from './count-slots.ts'
import { type GridFault, type GridLine, readGridLine } from './grid-line.ts'
import { misplacedRows, parity, stitchPhase } from './row-phase.ts'
import { findStitchName, stitchName } from './stitch-name.ts'

/** What the reader of grid files may be told. */
export type GridFileOptions = Readonly<{
  /** Named in refusals. */
  fileName: string
  /** The stitch to read the grid as; wins over what the file's comment says. */
  stitch?: StitchKind
}>

/** What was read from a grid file, and in `notes` what was understood, in plain sentences. */
export type GridReading = Readonly<{
  chart: Chart
  beads: number
  /** Letters of the slots in use. */
  slots: readonly string[]
  notes: readonly string[]
}>

/** Refusals named in one reading; a file with more is mended a screenful at a time. */
const MOST_REFUSALS = 100

/**
 * Reads a chart from a grid file: one line a row from the top.
 *
 * Lines that begin with `#` are comments; the first that names a stitch decides it, unless one is
 * asked for, and a file with half-bead offsets and no name is brick. Before a semicolon a line may
 * give its offset in half beads; a file without offsets sets every second brick row half a bead to the
 * right. Ragged rows are fine; empty lines are skipped. A byte-order mark and any line ending are taken.
 *
 * @returns The chart, or every fault with its line: no text at all, a cell that is no slot, an offset that is not
 *   whole or out of step with its stitch, offsets in some lines only, no stitch, no rows, or more than
 *   4,000,000 cells, 100,000 columns or 100,000 rows.
 */
export function readGridFile(
  text: string,
  options: GridFileOptions,
): Result<GridReading, readonly Refusal[]> {
  if (isNoText(text)) return err([notText(options.fileName)])
  const sheet = readSheet(text, options.fileName)
  if (!sheet.ok) return sheet
  const { comments, lines } = sheet.value
  const named = nameStitch(comments, lines, options)
  const refusals = named.ok ? [] : [named.error]
  refusals.push(...offsetRefusals(lines, options.fileName))
  if (!named.ok || refusals.length > 0) return err(refusals)
  const chart = { stitch: named.value.stitch, rows: placeRows(lines, named.value.stitch) }
  const misplaced = misplacedRows(chart)
    .slice(0, MOST_REFUSALS)
    .map((row) => outOfStep(chart, row, { lines, fileName: options.fileName }))
  return misplaced.length > 0 ? err(misplaced) : ok(reading(chart, lines, named.value.note))
}

/** Pictures and other files of bytes hold control characters that no text does. */
function isNoText(text: string): boolean {
  for (let at = 0; at < Math.min(text.length, LOOKED_AT); at += 1) {
    const code = text.charCodeAt(at)
    if (code < 32 && (code < 9 || code > 13)) return true
  }
  return false
}

const LOOKED_AT = 4_096

function notText(fileName: string): Refusal {
  return {
    code: 'grid-not-text',
    message: `${fileName} is neither text nor a picture that can be read here.`,
    next: 'Choose a CSV with a letter a bead, or a PNG with a pixel a bead.',
  }
}

type NumberedLine = GridLine & Readonly<{ line: number }>
type Comment = Readonly<{ line: number; text: string }>
type Sheet = Readonly<{ comments: readonly Comment[]; lines: readonly NumberedLine[] }>

function readSheet(text: string, fileName: string): Result<Sheet, readonly Refusal[]> {
  const comments: Comment[] = []
  const lines: NumberedLine[] = []
  const refusals: Refusal[] = []
  let cells = 0
  for (const [line, content] of numberedLines(text)) {
    if (content.startsWith('#')) {
      comments.push({ line, text: content })
      continue
    }
    const read = readGridLine(content)
    cells += read.cells.length
    const tooLarge = sizeFault(read, cells, lines.length + 1)
    refusals.push(...read.faults.map((fault) => refuse(fault, { fileName, line })))
    if (tooLarge !== undefined) refusals.push(refuse(tooLarge, { fileName, line }))
    if (tooLarge !== undefined || refusals.length >= MOST_REFUSALS) break
    lines.push({ ...read, line })
  }
  if (refusals.length > 0) return err(refusals.slice(0, MOST_REFUSALS))
  return lines.length === 0 ? err([noRows(fileName)]) : ok({ comments, lines })
}

function* numberedLines(text: string): Generator<readonly [number, string]> {
  let line = 0
  for (const raw of text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/)) {
    line += 1
    const content = /^ *$/.test(raw) ? '' : raw.replace(/^ +/, '')
    if (content !== '') yield [line, content]
  }
}

function sizeFault(line: GridLine, cells: number, rows: number): GridFault | undefined {
  const next = `A chart holds at most ${formatCount(MAX_CELLS)} cells, ${formatCount(MAX_COLUMNS)} columns and ${formatCount(MAX_ROWS)} rows; cut the grid into panels.`
  const columns = Math.ceil((line.offset ?? 0) / 2) + line.cells.length
  if (columns > MAX_COLUMNS) {
    return { code: 'grid-too-many-columns', found: `${formatCount(columns)} columns`, next }
  }
  if (cells > MAX_CELLS)
    return { code: 'grid-too-many-cells', found: `${formatCount(cells)} cells so far`, next }
  if (rows > MAX_ROWS)
    return { code: 'grid-too-many-rows', found: `row ${formatCount(rows)}`, next }
  return undefined
}

type NamedStitch = Readonly<{ stitch: StitchKind; note: string }>

function nameStitch(
  comments: readonly Comment[],
  lines: readonly NumberedLine[],
  { fileName, stitch }: GridFileOptions,
): Result<NamedStitch, Refusal> {
  const comment = comments.find(({ text }) => findStitchName(text) !== undefined)
  const named = comment === undefined ? undefined : findStitchName(comment.text)
  if (stitch !== undefined) {
    const but =
      named === undefined || named === stitch || comment === undefined
        ? ''
        : `; line ${comment.line} says ${stitchName(named)}`
    return ok({ stitch, note: `Read as ${stitchName(stitch)}, as asked${but}.` })
  }
  if (named !== undefined && comment !== undefined) {
    return ok({
      stitch: named,
      note: `Read as ${stitchName(named)}, as line ${comment.line} says.`,
    })
  }
  if (lines.some(({ offset }) => parity(offset ?? 0) === 1)) {
    return ok({
      stitch: 'brick',
      note: 'Read as brick stitch, because its offsets are half beads.',
    })
  }
  return err({
    code: 'grid-stitch-unknown',
    message: `${fileName} does not say which stitch it is for.`,
    next: 'Choose the stitch, or begin the file with a line such as # brick.',
    field: 'stitch',
  })
}

function offsetRefusals(lines: readonly NumberedLine[], fileName: string): readonly Refusal[] {
  const bare = lines.filter(({ offset }) => offset === undefined)
  if (bare.length === 0 || bare.length === lines.length) return []
  const fault: GridFault = {
    code: 'grid-offset-missing',
    found: 'no offset, though other lines have one',
    next: 'Give every line an offset and a semicolon before its cells, or none of them.',
  }
  return bare.slice(0, MOST_REFUSALS).map(({ line }) => refuse(fault, { fileName, line }))
}

function placeRows(lines: readonly NumberedLine[], stitch: StitchKind): readonly ChartRow[] {
  return lines.map(({ offset, cells }, row) => ({
    start: offset ?? stitchPhase(stitch, row, 0),
    cells,
  }))
}

function outOfStep(
  { stitch, rows }: Chart,
  row: number,
  { lines, fileName }: Readonly<{ lines: readonly NumberedLine[]; fileName: string }>,
): Refusal {
  const found = `the offset ${rows[row]?.start ?? 0} in row ${row + 1}`
  const next =
    stitch === 'brick'
      ? 'Brick rows lie half a bead out of step: offsets of neighbouring rows differ by an odd number.'
      : stitch === 'right-angle-weave'
        ? 'In right-angle weave odd rows have odd offsets (beads that lie) and even rows even ones (beads that stand).'
        : `Offsets in ${stitchName(stitch)} are even: whole beads, counted in half beads.`
  const fault = { code: 'grid-row-out-of-step', found, next }
  return refuse(fault, { fileName, line: lines[row]?.line ?? 0 })
}

function reading(chart: Chart, lines: readonly NumberedLine[], stitchNote: string): GridReading {
  const counts = countSlots(chart)
  const beads = counts.reduce((sum, count) => sum + count, 0)
  const slots = [...counts].flatMap((count, slot) => (count > 0 ? [slotLabel(slot)] : []))
  const notes = [stitchNote, sizeNote(chart, beads, slots)]
  if (chart.stitch === 'brick' && lines.every(({ offset }) => offset === undefined)) {
    notes.push('The file gives no offsets: every second row is set half a bead to the right.')
  }
  if (isRagged(lines)) {
    notes.push('Its lines are not all as long: a shorter one has no beads at its end.')
  }
  if (lines.some(({ hasSmallLetters }) => hasSmallLetters)) {
    notes.push('Small letters are read as capitals.')
  }
  return { chart, beads, slots, notes }
}

/** Where offsets are given, lines end where they mean to. */
function isRagged(lines: readonly NumberedLine[]): boolean {
  const [first] = lines
  const isBare = lines.every(({ offset }) => offset === undefined)
  return isBare && lines.some(({ cells }) => cells.length !== first?.cells.length)
}

function sizeNote({ rows }: Chart, beads: number, slots: readonly string[]): string {
  const named = slots.length > 12 ? `${slots.slice(0, 12).join(', ')} and more` : slots.join(', ')
  const slotText =
    slots.length === 0 ? 'no slots' : `${slots.length === 1 ? 'slot' : 'slots'} ${named}`
  return `${formatCounted(rows.length, 'row')}, ${formatCounted(beads, 'bead')}, ${slotText}.`
}

function refuse(
  { code, found, next }: GridFault,
  { fileName, line }: Readonly<{ fileName: string; line: number }>,
): Refusal {
  return { code, message: `${fileName}, line ${line}: found ${found}.`, next, line }
}

function noRows(fileName: string): Refusal {
  return {
    code: 'grid-empty',
    message: `${fileName} has no rows.`,
    next: 'A grid file has one line a row, its slots set apart by commas, such as A,B,A.',
  }
}
