import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readCsv } from '../../../../electron/service/exchange/csv-table.ts'
import { decodeText } from '../../../../electron/service/exchange/decode-text.ts'

type Vector = Readonly<{
  file: string
  encoding: string
  delimiter: string
  why: string
  rows: readonly (readonly string[])[]
  errors: readonly Readonly<{ line: number; code: string; level?: string }>[]
}>

const folder = new URL('../../../fixtures/vectors/csv/', import.meta.url)
const { files } = JSON.parse(readFileSync(new URL('expected.json', folder), 'utf8')) as {
  files: readonly Vector[]
}

const ENCODINGS: Readonly<Record<string, string>> = {
  'utf-8': 'UTF-8',
  'utf-8-sig': 'UTF-8 with mark',
  'utf-16-le': 'UTF-16',
  'windows-1252': 'Windows-1252',
}
const CODES: Readonly<Record<string, string>> = {
  too_few: 'too-few-fields',
  too_many: 'too-many-fields',
}

describe('readCsv', () => {
  it.each(files)('reads $file as the vectors say: $why', (vector) => {
    const { text, encoding } = decodeText(readFileSync(new URL(vector.file, folder)))
    const table = readCsv(text)
    expect(encoding).toBe(ENCODINGS[vector.encoding])
    expect(table.rows.map((row) => row.cells)).toEqual(vector.rows)
    expect(table.rows.length === 0 ? vector.delimiter : table.delimiter).toBe(vector.delimiter)
    // A quote inside an unquoted field is read as it stands and is no fault.
    const errors = vector.errors.filter((error) => error.level !== 'warning')
    expect(table.faults.map(({ line, code }) => ({ line, code }))).toEqual(
      errors.map(({ line, code }) => ({ line, code: CODES[code] })),
    )
  })

  it('gives each row the line it begins on, over blank lines and breaks inside quotes', () => {
    const { rows } = readCsv('a;b\r\n\r\n1;"two\r\nlines"\r\n\r\n\r\nä;4\r\n')
    expect(rows.map((row) => row.line)).toEqual([1, 3, 7])
  })

  it('counts the sep= line', () => {
    expect(readCsv('sep=;\r\na;b\r\n1;2\r\n').rows.map((row) => row.line)).toEqual([2, 3])
  })

  it('keeps the rows before a quote that never ends, and names its line', () => {
    const { rows, faults } = readCsv('a;b\n1;2\n"x;3\n4;5\n')
    expect(rows.map((row) => row.cells)).toEqual([
      ['a', 'b'],
      ['1', '2'],
    ])
    expect(faults).toMatchObject([{ code: 'unfinished-quote', line: 3 }])
  })
})

describe('decodeText', () => {
  it('reads UTF-16 with the high byte first', () => {
    const bytes = Uint8Array.from([0xfe, 0xff, 0x00, 0x41, 0x20, 0xac])
    expect(decodeText(bytes)).toEqual({ text: 'A€', encoding: 'UTF-16' })
  })
})
