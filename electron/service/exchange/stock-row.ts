import type { BeadFinish } from '../../../shared-core/beads/bead-form.ts'
import type { BeadTables } from '../../../shared-core/beads/user-forms.ts'
import type { Refusal } from '../../../shared-core/refusal.ts'
import type { Result } from '../../../shared-core/result.ts'
import type { CurrencyCode } from '../../../shared-core/units/currency.ts'
import { parseCount } from '../../../shared-core/units/parse-count.ts'
import { parseDate } from '../../../shared-core/units/parse-date.ts'
import { parseThread } from '../../../shared-core/units/parse-length.ts'
import { parseMass } from '../../../shared-core/units/parse-mass.ts'
import { parseMoney } from '../../../shared-core/units/parse-money.ts'
import type { Parsed } from '../../../shared-core/units/parse-options.ts'
import { type DecimalMark, quoted } from '../../../shared-core/units/parse-options.ts'
import type { CsvRow } from './csv-table.ts'
import { beadFormId, finishOf, kindOf, threadFormId } from './find-form.ts'
import type { KindWord } from './kind-words.ts'
import type { StockColumn } from './stock-headings.ts'

/** A row of a stock list as the studio understands it; quantities in the material's unit. */
export type StockRow = Readonly<{
  line: number
  code: string
  name: string
  kind: KindWord['kind']
  formId: string | null
  colourHex: string | null
  finish: BeadFinish | null
  /** Null where the list does not say how much there is. */
  quantity: number | null
  unit: 'mg' | 'mm' | 'piece'
  packQuantity: number | null
  packPriceMinor: number | null
  supplier: string
  dyeLot: string
  boughtOn: string | null
  drawer: string
  note: string
  remarks: readonly string[]
}>

/** How the cells of a list are to be read. */
export type RowReading = Readonly<{
  columns: readonly StockColumn[]
  headings: readonly string[]
  decimal: DecimalMark | undefined
  currency: CurrencyCode
  tables: BeadTables
}>

/** A row read, or every fault in it. */
export function readStockRow(
  row: CsvRow,
  reading: RowReading,
): Result<StockRow, readonly Refusal[]> {
  const cells = cellsOf(row, reading)
  const kind = readKind(cells)
  const quantity = kind && readQuantity(cells, kind)
  const pack = kind && readPack(cells, kind)
  const price = cells.read('pack-price', (text, options) =>
    parseMoney(text, { ...options, currency: reading.currency }),
  )
  const boughtOn = cells.read('bought-on', (text, options) => parseDate(text, options))
  const colourHex = readColour(cells)
  const code = cells.text('code')
  if (code === '') {
    cells.fault('code', {
      code: 'no-code',
      message: 'The code is missing.',
      next: 'Give each material a code, or leave this line out.',
    })
  }
  const look = kind && readLook(cells, kind)
  if (cells.faults.length > 0 || kind === undefined || look === undefined) {
    return { ok: false, error: cells.faults }
  }
  return {
    ok: true,
    value: {
      line: row.line,
      code,
      name: cells.text('name') || code,
      kind: kind.kind,
      ...look,
      colourHex,
      quantity: quantity ?? null,
      unit: UNIT[kind.kind],
      packQuantity: pack && pack > 0 ? pack : null,
      packPriceMinor: price?.amountMinor ?? null,
      supplier: cells.text('supplier'),
      dyeLot: cells.text('dye-lot'),
      boughtOn: boughtOn ?? null,
      drawer: cells.text('drawer').slice(0, 40),
      note: cells.text('note').slice(0, 2_000),
      remarks: cells.remarks,
    },
  }
}

const UNIT = { bead: 'mg', thread: 'mm', finding: 'piece', packaging: 'piece' } as const

type CellOptions = Readonly<{ decimal: DecimalMark | undefined; field: string; line: number }>
type Cells = Readonly<{
  tables: BeadTables
  text: (column: StockColumn) => string
  /** The value of a cell that is not empty; a cell that cannot be read becomes a fault. */
  read: <T>(
    column: StockColumn,
    parse: (text: string, options: CellOptions) => Result<Parsed<T>, Refusal>,
  ) => T | undefined
  fault: (column: StockColumn, fault: Omit<Refusal, 'field' | 'line'>) => undefined
  faults: readonly Refusal[]
  remark: (text: string) => void
  remarks: readonly string[]
}>

function cellsOf(row: CsvRow, { columns, headings, decimal, tables }: RowReading): Cells {
  const faults: Refusal[] = []
  const remarks: string[] = []
  const at = (column: StockColumn) => columns.indexOf(column)
  const text = (column: StockColumn) => (row.cells[at(column)] ?? '').replace(/\s+/g, ' ').trim()
  const place = (column: StockColumn) => ({ field: headings[at(column)] ?? column, line: row.line })
  return {
    tables,
    text,
    faults,
    remarks,
    remark: (remark) => remarks.push(remark),
    fault: (column, fault) => void faults.push({ ...fault, ...place(column) }),
    read: (column, parse) => {
      if (text(column) === '') return undefined
      const parsed = parse(text(column), { decimal, ...place(column) })
      if (parsed.ok) return parsed.value.value
      faults.push({ ...parsed.error, ...place(column) })
      return undefined
    },
  }
}

function readKind(cells: Cells): KindWord | undefined {
  const told = cells.text('kind')
  const kind = kindOf(told === '' ? cells.text('name') : told)
  if (kind !== undefined) return kind
  return cells.fault(told === '' ? 'name' : 'kind', {
    code: 'unknown-kind',
    message:
      told === ''
        ? 'The line does not say what kind of material it is.'
        : `${quoted(told)} is not a kind of material known here.`,
    next: 'Write cylinder, rocaille, bugle, drop, thread, finding or packaging (or the German words).',
  })
}

function readLook(cells: Cells, kind: KindWord) {
  const formId = readForm(cells, kind)
  const told = cells.text('finish')
  const finish = finishOf(told)
  if (told !== '' && finish === undefined) {
    cells.remark(`The finish ${quoted(told)} is not known; choose one later.`)
  }
  return { formId: formId ?? null, finish: kind.kind === 'bead' ? (finish ?? null) : null }
}

function readForm(cells: Cells, kind: KindWord): string | undefined {
  const size = cells.text('size')
  if (kind.kind === 'bead') {
    const formId = beadFormId(kind, size, cells.tables)
    if (formId === undefined) {
      cells.remark(
        `No ${kind.family} of size ${quoted(size)} is in the tables; choose its form later.`,
      )
    } else if (kind.family === 'rocaille' && kind.make === undefined) {
      cells.remark(`Taken for a ${formId.includes('japanese') ? 'Japanese' : 'Czech'} rocaille.`)
    }
    return formId
  }
  if (kind.kind !== 'thread') return undefined
  const formId = threadFormId(size, cells.text('name'), cells.tables)
  if (formId === undefined) cells.remark('The thread is not in the tables; choose it later.')
  return formId
}

function readColour(cells: Cells): string | null {
  const told = cells.text('colour')
  if (told === '') return null
  const digits = /^#?([0-9a-f]{6}|[0-9a-f]{3})$/i.exec(told)?.[1]?.toLowerCase()
  if (digits !== undefined) {
    return `#${digits.length === 3 ? [...digits].map((digit) => digit + digit).join('') : digits}`
  }
  cells.fault('colour', {
    code: 'not-a-colour',
    message: `${quoted(told)} is not a colour.`,
    next: 'Write a colour as # and six digits, such as #4b5a63, or leave the cell empty.',
  })
  return null
}

function readPack(cells: Cells, { kind }: KindWord): number | undefined {
  switch (kind) {
    case 'bead':
      return cells.read('pack', parseMass)
    case 'thread':
      return cells.read('pack', parseThread)
    case 'finding':
    case 'packaging':
      return cells.read('pack', parseCount)
  }
}

function readQuantity(cells: Cells, { kind }: KindWord): number | undefined {
  switch (kind) {
    case 'bead':
      return readGrams(cells)
    case 'thread':
      return readLength(cells)
    case 'finding':
    case 'packaging': {
      const pieces = cells.read('pieces', parseCount)
      const known = pieces ?? cells.read('grams', parseCount)
      if (known === undefined) cells.remark('No number of pieces is given; count it in later.')
      return known
    }
  }
}

function readGrams(cells: Cells): number | undefined {
  const grams = cells.read('grams', parseMass)
  if (grams !== undefined || cells.text('grams') !== '') return grams
  if (cells.text('pieces') !== '') {
    return cells.fault('pieces', {
      code: 'beads-by-weight',
      message: `${quoted(cells.text('pieces'))} pieces are given of a bead, and no weight.`,
      next: 'Beads are kept by weight: give the grams, or leave both cells empty and weigh it later.',
    })
  }
  cells.remark('No weight is given; weigh it in later.')
  return undefined
}

/** Thread on hand as a length, or as a number of whole packs. */
function readLength(cells: Cells): number | undefined {
  const length = cells.read('grams', parseThread)
  if (length !== undefined) return length
  const packs = cells.read('pieces', parseCount)
  const pack = cells.text('pack') === '' ? undefined : parseThread(cells.text('pack'))
  if (packs !== undefined && pack?.ok) {
    cells.remark(`${packs} ${packs === 1 ? 'pack' : 'packs'} of ${pack.value.understood}.`)
    return packs * pack.value.value
  }
  cells.remark('No length is given; count it in later.')
  return undefined
}
