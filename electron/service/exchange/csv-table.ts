import { CsvError, parse } from 'csv-parse/sync'
import type { Refusal } from '../../../shared-core/refusal.ts'

/** A row with the line it begins on, counted from 1 in the file. */
export type CsvRow = Readonly<{ line: number; cells: readonly string[] }>

/** A table as read: the first row is the headings. `faults` are rows whose number of fields is off. */
export type CsvTable = Readonly<{
  delimiter: Delimiter
  rows: readonly CsvRow[]
  faults: readonly Refusal[]
}>

export type Delimiter = ';' | ',' | '\t' | '|'

const DELIMITERS: readonly Delimiter[] = [';', ',', '\t', '|']
const ROWS_TO_JUDGE_BY = 20

/**
 * Reads separated text: quoted fields may hold delimiters, line breaks and doubled quotes; blank
 * lines and a leading `sep=;` line are no rows; a quote inside an unquoted field is a character.
 *
 * Every cell stays the text it is. Without a `sep=` line the delimiter is the one that gives the most
 * fields in every row alike.
 */
export function readCsv(text: string): CsvTable {
  const hint = /^sep=([;,\t|])(\r\n|\r|\n|$)/i.exec(text)
  const body = hint === null ? text : text.slice(hint[0].length)
  const firstLine = hint === null || hint[2] === '' ? 1 : 2
  const delimiter = (hint?.[1] as Delimiter | undefined) ?? guessDelimiter(body)
  const read = readRows(body, delimiter, firstLine)
  return { delimiter, rows: read.rows, faults: [...read.faults, ...raggedRows(read.rows)] }
}

type Read = Readonly<{ rows: readonly CsvRow[]; faults: readonly Refusal[] }>
/** A record, and how many bytes of the text were read at its end, its line break included. */
type Recorded = Readonly<{ record: string[]; info: Readonly<{ bytes: number }> }>

function readRows(text: string, delimiter: Delimiter, firstLine: number): Read {
  const { records, unfinished } = parseRecords(text, delimiter)
  const bytes = Buffer.from(text)
  const rows: CsvRow[] = []
  let line = firstLine
  let at = 0
  for (const { record, info } of records) {
    const source = bytes.toString('utf8', at, info.bytes)
    // The parser skips blank lines before a record.
    const blankLines = countBreaks(/^[\r\n]*/.exec(source)?.[0] ?? '')
    const isBlank = record.length === 1 && record[0]?.trim() === ''
    if (!isBlank) rows.push({ line: line + blankLines, cells: record })
    line += countBreaks(source)
    at = info.bytes
  }
  return { rows, faults: unfinished ? [{ ...unfinishedQuote, line }] : [] }
}

const OPTIONS = {
  // The mark in a file belongs to its encoding; it is gone by now.
  bom: false,
  info: true,
  relax_column_count: true,
  relax_quotes: true,
  skip_empty_lines: true,
  record_delimiter: ['\r\n', '\n', '\r'],
}

type Records = Readonly<{ records: readonly Recorded[]; unfinished: boolean }>

function parseRecords(text: string, delimiter: Delimiter): Records {
  // With `info` each record comes beside where it ended; the types do not say so.
  const read = (to = -1) =>
    parse(text, { ...OPTIONS, to, delimiter }) as unknown as readonly Recorded[]
  try {
    return { records: read(), unfinished: false }
  } catch (cause) {
    if (!(cause instanceof CsvError) || cause.code !== 'CSV_QUOTE_NOT_CLOSED') throw cause
    const whole = Number((cause as unknown as { records: number }).records)
    return { records: whole === 0 ? [] : read(whole), unfinished: true }
  }
}

const unfinishedQuote: Refusal = {
  code: 'unfinished-quote',
  message: 'A quoted field that begins here does not end.',
  next: 'Close the quote in the file, or export the file again.',
}

function countBreaks(text: string): number {
  return text.match(/\r\n|\r|\n/g)?.length ?? 0
}

function guessDelimiter(text: string): Delimiter {
  const scores = DELIMITERS.map((delimiter) => ({ delimiter, score: score(text, delimiter) }))
  const best = scores.reduce((a, b) => (b.score > a.score ? b : a))
  return best.score > 0 ? best.delimiter : ','
}

/** Fields beyond the first in the heading, times the share of rows that have as many. */
function score(text: string, delimiter: Delimiter): number {
  const { rows } = readRows(text.slice(0, 20_000), delimiter, 1)
  const judged = rows.slice(0, ROWS_TO_JUDGE_BY)
  const width = judged[0]?.cells.length ?? 0
  const alike = judged.filter((row) => row.cells.length === width).length
  return width < 2 ? 0 : (width - 1) * (alike / judged.length)
}

function raggedRows(rows: readonly CsvRow[]): readonly Refusal[] {
  const width = rows[0]?.cells.length ?? 0
  return rows
    .filter((row) => row.cells.length !== width)
    .map(({ line, cells }) => ({
      code: cells.length < width ? 'too-few-fields' : 'too-many-fields',
      message: `Line ${line} has ${cells.length} fields where the headings have ${width}.`,
      next: 'Put the line right in the file (a delimiter too few or too many), or leave it out.',
      line,
    }))
}
