import { MAX_COLUMNS, MAX_ROWS } from '../chart/chart-limits.ts'
import { readHalves } from './half-number.ts'
import type { Side } from './last-lines.ts'
import { readWordRun } from './word-runs.ts'

/** What is wrong with a line: what was found and what is accepted. */
export type WordFault = Readonly<{ code: string; found: string; next: string }>

/** What a line says of its ends, in half beads: absent where it says nothing. */
export type EndMarks = Readonly<{ begins?: number; left?: number; right?: number }>

/** A line of a word chart as read; `rows` count from 0, `cells` go in the direction of work. */
export type ReadWordLine = Readonly<{
  rows: readonly number[]
  side: Side | undefined
  marks: EndMarks
  cells: Uint16Array
}>

/** Whether a text is a line of rows: it begins with a row's number, with `Row` before it or a colon after. */
export function isWordLine(text: string): boolean {
  return /^\s*(rows?|r)\.?\s*\d/i.test(text) || /^\s*\d+\s*(\(|\[|:|,|\.\s)/.test(text)
}

/**
 * Reads one line, such as `Rows 1 and 2 (R): (5)A`, `Row 9 (L) [increase ½ at left]: (1)A, (2)B` or
 * `9: 1A 2B`. Words after the row's number and remarks after a dash are passed over.
 *
 * @returns The line, or the first thing in it that cannot be read.
 */
export function readWordLine(text: string): ReadWordLine | WordFault {
  const match = LINE.exec(text)
  if (match === null) return fault('word-row-unknown', quoted(text), LINE_FORM)
  const [, first = '', second, tail = ''] = match
  const rows = [first, ...(second === undefined ? [] : [second])].map(
    (number) => Number(number) - 1,
  )
  const rowFault = faultyRows(rows)
  if (rowFault !== undefined) return rowFault
  const { marks, rest } = takeMarks(tail)
  if ('code' in marks) return marks
  const { side, rest: body } = takeSide(rest)
  const cells = readBody(body.replace(/^[^():]*:/, '').replace(/^\s*:/, ''))
  return 'code' in cells ? cells : { rows, side, marks, cells: cells.cells }
}

const LINE = /^\s*(?:rows?|r)?\.?\s*(\d{1,7})(?:\s*(?:&|and|-|–|\+|\/)\s*(\d{1,7}))?(.*)$/i

const LINE_FORM = 'A line is such as Row 3 (L): (2)A, (1)B.'

function faultyRows(rows: readonly number[]): WordFault | undefined {
  const [first = -1, second] = rows
  const isFound = first >= 0 && first < 2 * MAX_ROWS
  if (isFound && (second === undefined || second === first + 1)) return undefined
  return fault(
    'word-row-unknown',
    `rows ${rows.map((row) => row + 1).join(' and ')}`,
    `Rows count from 1 to ${2 * MAX_ROWS}; two together follow each other, such as Rows 1 and 2.`,
  )
}

function takeSide(text: string): Readonly<{ side: Side | undefined; rest: string }> {
  const match = /\(\s*(l|r|left|right)\s*\)/i.exec(text)
  if (match === null) return { side: undefined, rest: text }
  const side = /^l/i.test(match[1] ?? '') ? 'left' : 'right'
  return { side, rest: `${text.slice(0, match.index)}${text.slice(match.index + match[0].length)}` }
}

function takeMarks(text: string): Readonly<{ marks: EndMarks | WordFault; rest: string }> {
  const match = /\[([^\]]*)\]/.exec(text)
  if (match === null) return { marks: {}, rest: text }
  const rest = `${text.slice(0, match.index)}${text.slice(match.index + match[0].length)}`
  return { marks: readMarks(match[1] ?? ''), rest }
}

const MARKS_FORM =
  'Ends are told such as [increase ½ at left, decrease ½ at right], [-½ both ends] or [begins 2½ from the left].'

function readMarks(text: string): EndMarks | WordFault {
  let marks: EndMarks = {}
  for (const part of text.split(/[,;](?!\d)/)) {
    const mark = readMark(part.trim())
    if (mark === undefined) return fault('word-ends-unknown', quoted(text), MARKS_FORM)
    marks = { ...marks, ...mark }
  }
  return marks
}

function readMark(text: string): EndMarks | undefined {
  if (text === 'even at both ends') return { left: 0, right: 0 }
  const begins = /^begins (.+?) from (?:the )?left$/i.exec(text)
  if (begins !== null) {
    const halves = inReach(readHalves(begins[1] ?? ''))
    return halves === undefined ? undefined : { begins: halves }
  }
  const told =
    /^(increase|decrease|\+|-|−)\s*(.+?)\s*(?:at )?(left|right|both)(?: ends| sides)?$/i.exec(
      text,
    ) ?? reversed(/^(left|right)\s*(\+|-|−)\s*(.+)$/i.exec(text))
  const halves = inReach(readHalves(told?.[2] ?? 'none'))
  if (told === null || halves === undefined) return undefined
  const signed = /^(increase|\+)$/i.test(told[1] ?? '') ? halves : -halves
  const place = (told[3] ?? '').toLowerCase()
  return {
    ...(place === 'right' ? {} : { left: signed }),
    ...(place === 'left' ? {} : { right: signed }),
  }
}

function reversed(match: RegExpExecArray | null): readonly string[] | null {
  return match === null ? null : [match[0], match[2] ?? '', match[3] ?? '', match[1] ?? '']
}

function inReach(halves: number | undefined): number | undefined {
  return halves === undefined || halves > 2 * MAX_COLUMNS ? undefined : halves
}

const RUN_FORM =
  'Runs are a count and a slot letter, such as (2)A or 2A; a place without a bead is (1)gap or (1)-.'

function readBody(text: string): Readonly<{ cells: Uint16Array }> | WordFault {
  const plain = text.replace(/\s[—–#].*$/, '').replace(/\)\s+/g, ')')
  const runs = []
  let places = 0
  for (const token of plain.split(/[\s,;]+/)) {
    if (token === '' || token === '.') continue
    const run = readWordRun(token.replace(/\.$/, ''))
    if (run === undefined) return fault('word-run-unknown', quoted(token), RUN_FORM)
    runs.push(run)
    places += run.count
    if (places > MAX_COLUMNS) {
      return fault(
        'word-row-too-long',
        `${places} beads`,
        `A row holds at most ${MAX_COLUMNS} beads.`,
      )
    }
  }
  if (places === 0) return fault('word-row-empty', 'no beads', RUN_FORM)
  const cells = new Uint16Array(places)
  let at = 0
  for (const { count, cell } of runs) {
    cells.fill(cell, at, at + count)
    at += count
  }
  return { cells }
}

function fault(code: string, found: string, next: string): WordFault {
  return { code, found, next }
}

function quoted(text: string): string {
  const plain = text.trim()
  return `“${plain.length > 40 ? `${plain.slice(0, 40)}…` : plain}”`
}
