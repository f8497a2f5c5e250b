import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { type KnownStock, readStockFile } from '../../../../electron/service/exchange/stock-file.ts'
import { referenceTables } from '../../../../shared-core/beads/bead-tables.ts'

const empty: KnownStock = {
  currency: 'EUR',
  decimalMark: '.',
  tables: referenceTables,
  materials: new Map(),
}

function fileOf(content: string | Buffer) {
  return { fileName: 'stock.csv', base64: Buffer.from(content).toString('base64') }
}

const sample = fileOf(
  readFileSync(new URL('../../../fixtures/samples/stock-list.csv', import.meta.url)),
)

function rowOf(heading: string, row: string, known: KnownStock = empty) {
  return readStockFile({ file: fileOf(`${heading}\n${row}\n`) }, known)
}

describe('readStockFile', () => {
  const preview = readStockFile({ file: sample }, empty)

  it('understands the spreadsheet export', () => {
    expect(preview.understood).toEqual({
      encoding: 'UTF-8 with mark',
      delimiter: 'semicolons',
      decimalMark: ',',
    })
    expect(preview.columns).toEqual([
      ...[
        'code',
        'name',
        'kind',
        'size',
        'colour',
        'finish',
        'grams',
        'pieces',
        'pack-price',
        'pack',
      ],
      ...['supplier', 'dye-lot', 'bought-on', 'drawer', 'note'],
    ])
    expect(preview.faults).toEqual([])
  })

  it('reads a row with its dye lot, pack and note over two lines', () => {
    expect(preview.rows[1]).toEqual({
      line: 3,
      code: 'WS-11-04',
      name: 'Zylinderperle wet slate',
      kind: 'bead',
      formId: 'cylinder-11/0',
      colourHex: '#4b5a63',
      finish: 'matte',
      quantity: 6_100,
      unit: 'mg',
      packQuantity: 7_200,
      packPriceMinor: 435,
      supplier: 'Marlow Bead Supply',
      dyeLot: 'K22',
      boughtOn: '2026-06-19',
      drawer: 'A1',
      note: 'neue Charge, leicht blauer',
      becomes: 'new-lot',
      remarks: [],
    })
  })

  it('reads trade words, thousands, packs of thread and doubled quotes', () => {
    const facts = preview.rows.map(({ code, kind, formId, quantity, packQuantity }) => [
      code,
      kind,
      formId,
      quantity,
      packQuantity,
    ])
    expect(facts).toContainEqual(['LA-15-01', 'bead', 'rocaille-japanese-15/0', 12_300, 10_000])
    expect(facts).toContainEqual(['EG-08-02', 'bead', 'rocaille-japanese-8/0', 1_245_500, 250_000])
    expect(facts).toContainEqual(['TH-06', 'thread', 'braided-6lb', null, 114_000])
    expect(facts).toContainEqual(['EW-01', 'finding', null, 48, 20])
    expect(preview.rows.at(-1)).toMatchObject({ name: 'card, "small", kraft', kind: 'packaging' })
  })

  it('takes a tube that was not weighed, with a remark', () => {
    const tube = preview.rows.find((row) => row.code === 'MB-11-09')
    expect(tube).toMatchObject({
      line: 12,
      quantity: null,
      note: 'nicht gewogen',
      remarks: ['No weight is given; weigh it in later.'],
    })
  })

  it('names the bad rows by line and field', () => {
    const faults = preview.badRows.map(({ line, code, faults: found }) => ({
      line,
      code,
      found: found.map((fault) => [fault.code, fault.field, fault.line]),
    }))
    expect(faults).toEqual([
      { line: 14, code: 'EW-02', found: [['not-a-number', 'Stück', 14]] },
      {
        line: 16,
        code: 'XX',
        found: [
          ['no-such-day', 'Gekauft am', 16],
          ['not-a-colour', 'Farbe', 16],
        ],
      },
    ])
    expect(preview.badRows[0]?.faults[0]?.message).toContain('zwölf')
    expect(preview.badRows[1]?.faults[1]?.message).toContain('#12345')
  })

  it('reads English headings, tabs and points the same way', () => {
    const heading = 'Code\tName\tType\tSize\tOn hand g\tPack price\tPack'
    const { rows, understood } = rowOf(
      heading,
      'WS\twet slate\tcylinder bead\t11/0\t18.45\t4.20\t7.2 g',
    )
    expect(understood).toMatchObject({ delimiter: 'tabs', decimalMark: '.' })
    expect(rows[0]).toMatchObject({
      formId: 'cylinder-11/0',
      quantity: 18_450,
      packPriceMinor: 420,
    })
  })

  it('reads a figure that could be either by the workshop’s mark, and by a told one before it', () => {
    const file = fileOf('Code,Kind,Size,Grams\nWS,cylinder,11/0,"1.250"\n')
    const grams = (mark?: '.' | ',') =>
      readStockFile({ file, ...(mark ? { decimalMark: mark } : {}) }, empty).rows[0]?.quantity
    expect([grams(), grams('.'), grams(',')]).toEqual([1_250, 1_250, 1_250_000])
  })

  it('maps columns as it is told', () => {
    const file = fileOf('one;two;three\nWS;cylinder;18,45\n')
    const read = readStockFile({ file, columns: ['code', 'kind', 'grams'] }, empty)
    expect(read.rows[0]).toMatchObject({ code: 'WS', kind: 'bead', quantity: 18_450 })
  })

  it.each([
    ['no code column', ['name', 'kind', 'grams'], 'no-code-column'],
    ['two columns for grams', ['code', 'grams', 'grams'], 'column-twice'],
    ['too few columns', ['code', 'kind'], 'column-count'],
  ] as const)('faults the file as a whole for %s', (_, columns, code) => {
    const file = fileOf('one;two;three\nWS;cylinder;18,45\n')
    const read = readStockFile({ file, columns: [...columns] }, empty)
    expect(read.faults.map((fault) => fault.code)).toContain(code)
    expect(read.rows).toEqual([])
  })

  it.each([
    ['an empty file', '', 'empty-file'],
    ['headings alone', 'Code;Kind\n', 'no-rows'],
  ])('faults %s', (_, content, code) => {
    const read = readStockFile({ file: fileOf(content) }, empty)
    expect(read.faults.map((fault) => fault.code)).toEqual([code])
  })

  it.each([
    ['a word for the kind that nobody knows', 'Code;Kind;Grams', 'WS;glitter;5', 'unknown-kind'],
    ['beads by the piece', 'Code;Kind;Pieces', 'WS;cylinder;500', 'beads-by-weight'],
    ['no code', 'Code;Kind;Grams', ';cylinder;5', 'no-code'],
    ['a weight below zero', 'Code;Kind;Grams', 'WS;cylinder;-5', 'negative'],
    ['a field too many', 'Code;Kind;Grams', 'WS;cylinder;5;6', 'too-many-fields'],
    ['another currency', 'Code;Kind;Price', 'WS;cylinder;$5', 'wrong-currency'],
  ])('faults a row for %s', (_, heading, row, code) => {
    const read = rowOf(heading, row)
    expect(read.badRows.map(({ line, faults }) => [line, faults[0]?.code])).toEqual([[2, code]])
  })

  it('refuses to count a lot twice that is in stock already', () => {
    const lot = { dyeLot: 'K17', boughtOn: null, onHand: 18_450 }
    const material = { name: 'wet slate', kind: 'bead', unit: 'mg', lots: [lot] } as const
    const known = { ...empty, materials: new Map([['ws', material]]) }
    const read = (row: string) => rowOf('Code;Kind;Grams;Lot', row, known)
    expect(read('WS;cylinder;5;K17').badRows[0]?.faults[0]?.code).toBe('lot-in-stock')
    expect(read('WS;cylinder;5;K18').rows[0]?.becomes).toBe('new-lot')
    expect(read('WS;thread;;K18').badRows[0]?.faults[0]?.code).toBe('kind-differs')
  })
})
