import type { z } from 'zod'
import type { BeadTables } from '../../../shared-core/beads/user-forms.ts'
import type {
  stockFilePreview,
  stockFileRequest,
} from '../../../shared-core/contract/stock-calls.ts'
import type { Refusal } from '../../../shared-core/refusal.ts'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { formatMassExactly } from '../../../shared-core/units/format-mass.ts'
import { massMg } from '../../../shared-core/units/mass.ts'
import type { DecimalMark } from '../../../shared-core/units/parse-options.ts'
import { type CsvRow, type CsvTable, type Delimiter, readCsv } from './csv-table.ts'
import { decodeText } from './decode-text.ts'
import { checkColumns, guessColumns } from './guess-columns.ts'
import { guessDecimalMark } from './guess-decimal-mark.ts'
import type { StockColumn } from './stock-headings.ts'
import { type RowReading, readStockRow, type StockRow } from './stock-row.ts'

export type StockFileRequest = z.output<typeof stockFileRequest>
export type StockFilePreview = z.output<typeof stockFilePreview>

/** What the store knows already, as far as a stock list can meet it. */
export type KnownStock = Readonly<{
  currency: string
  decimalMark: DecimalMark
  tables: BeadTables
  /** By code in small letters. */
  materials: ReadonlyMap<string, KnownMaterial>
}>

export type KnownMaterial = Readonly<{
  name: string
  kind: StockRow['kind']
  unit: StockRow['unit']
  lots: readonly Readonly<{ dyeLot: string; boughtOn: string | null; onHand: number }>[]
}>

const SAMPLE_ROWS = 8

/** Reads a stock list and says what would be written, line by line; decides nothing and writes nothing. */
export function readStockFile(request: StockFileRequest, known: KnownStock): StockFilePreview {
  const bytes = Buffer.from(request.file.base64, 'base64')
  const { text, encoding } = decodeText(bytes)
  const table = readCsv(text)
  const headings = table.rows[0]?.cells ?? []
  const columns = request.columns ?? guessColumns(headings)
  const body = table.rows.slice(1)
  const evident = request.decimalMark ?? guessDecimalMark(figures(body, columns))
  const faults = [
    ...checkTable(table),
    ...(headings.length > 0 ? checkColumns(columns, headings) : []),
  ]
  const reading = {
    columns,
    headings,
    decimal: evident ?? known.decimalMark,
    currency: currencyCode(known.currency),
    tables: known.tables,
  }
  const read = faults.length > 0 ? NOTHING_READ : readRows(body, table.faults, reading, known)
  return {
    understood: {
      encoding,
      delimiter: DELIMITER_WORDS[table.delimiter],
      decimalMark: reading.decimal,
    },
    headings: [...headings],
    columns: [...columns],
    sampleRows: body.slice(0, SAMPLE_ROWS).map((row) => [...row.cells]),
    ...read,
    faults,
  }
}

const DELIMITER_WORDS: Readonly<Record<Delimiter, string>> = {
  ';': 'semicolons',
  ',': 'commas',
  '\t': 'tabs',
  '|': 'upright strokes',
}

type ReadRows = Pick<StockFilePreview, 'rows' | 'badRows'>
const NOTHING_READ: ReadRows = { rows: [], badRows: [] }

const FIGURES: readonly StockColumn[] = ['grams', 'pack-price', 'pack']

function figures(rows: readonly CsvRow[], columns: readonly StockColumn[]): readonly string[] {
  const places = columns.flatMap((column, at) => (FIGURES.includes(column) ? [at] : []))
  return rows.flatMap((row) => places.map((at) => row.cells[at] ?? ''))
}

function checkTable(table: CsvTable): readonly Refusal[] {
  if (table.rows.length === 0) {
    return [{ code: 'empty-file', message: 'The file is empty.', next: 'Choose another file.' }]
  }
  if (table.rows.length > 1) return []
  return [
    {
      code: 'no-rows',
      message: 'The file has headings and no lines below them.',
      next: 'Choose a file with at least one material.',
    },
  ]
}

function readRows(
  body: readonly CsvRow[],
  tableFaults: readonly Refusal[],
  reading: RowReading,
  known: KnownStock,
): ReadRows {
  const codeAt = reading.columns.indexOf('code')
  const ragged = Map.groupBy(tableFaults, (fault) => fault.line ?? 0)
  const firstOf = new Map<string, StockRow>()
  const read: ReadRows = { rows: [], badRows: [] }
  for (const row of body) {
    const code = row.cells[codeAt]?.trim() ?? ''
    const torn = ragged.get(row.line)
    const result = torn ? { ok: false as const, error: torn } : readStockRow(row, reading)
    const faults = result.ok ? meets(result.value, firstOf, known, reading.decimal) : result.error
    if (!result.ok || faults.length > 0) {
      read.badRows.push({ line: row.line, code, faults: [...faults] })
      continue
    }
    read.rows.push(asWritten(result.value, firstOf, known))
    const key = result.value.code.toLowerCase()
    if (!firstOf.has(key)) firstOf.set(key, result.value)
  }
  const unread = tableFaults.filter((fault) => !body.some((row) => row.line === fault.line))
  return {
    rows: read.rows,
    badRows: [
      ...read.badRows,
      ...unread.map((fault) => ({ line: fault.line ?? 0, code: '', faults: [fault] })),
    ],
  }
}

function asWritten(
  row: StockRow,
  firstOf: ReadonlyMap<string, StockRow>,
  known: KnownStock,
): StockFilePreview['rows'][number] {
  const key = row.code.toLowerCase()
  const becomes = known.materials.has(key) || firstOf.has(key) ? 'new-lot' : 'new-material'
  return { ...row, becomes, remarks: [...row.remarks] }
}

/** What is wrong with a row beside the same code earlier in the file or in the store. */
function meets(
  row: StockRow,
  firstOf: ReadonlyMap<string, StockRow>,
  known: KnownStock,
  decimal: DecimalMark | undefined,
): readonly Refusal[] {
  const key = row.code.toLowerCase()
  const stored = known.materials.get(key)
  const earlier = firstOf.get(key)
  const kind = stored?.kind ?? earlier?.kind
  if (kind !== undefined && kind !== row.kind) {
    return [
      {
        code: 'kind-differs',
        message: `${row.code} is a ${row.kind} here and a ${kind} ${stored ? 'in stock' : `on line ${earlier?.line}`}.`,
        next: 'Give one of them another code, or leave this line out.',
        line: row.line,
      },
    ]
  }
  const there = stored?.lots.find(
    (lot) => lot.dyeLot === row.dyeLot && lot.boughtOn === row.boughtOn,
  )
  return there === undefined ? [] : [lotThere(row, there.onHand, decimal)]
}

function lotThere(row: StockRow, onHand: number, decimal: DecimalMark | undefined): Refusal {
  const amount =
    row.unit === 'mg' ? formatMassExactly(massMg(onHand), decimal ?? '.') : `${onHand} ${row.unit}`
  const lot = row.dyeLot === '' ? 'this lot' : `lot ${row.dyeLot}`
  return {
    code: 'lot-in-stock',
    message: `${row.code}, ${lot} is in stock already, with ${amount}.`,
    next: 'Leave this line out, and count or weigh the lot instead.',
    line: row.line,
  }
}
