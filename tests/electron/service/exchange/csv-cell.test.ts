import { readFileSync } from 'node:fs'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { csvCell } from '../../../../electron/service/exchange/csv-cell.ts'
import { readCsv } from '../../../../electron/service/exchange/csv-table.ts'

const folder = new URL('../../../fixtures/vectors/csv/', import.meta.url)
const rowsOf = (file: string) =>
  readCsv(readFileSync(new URL(file, folder), 'utf8')).rows.map((row) => row.cells[1] ?? '')

describe('csvCell', () => {
  it('neutralises every payload as the vectors show it', () => {
    const raw = rowsOf('22_injection_raw.csv')
    const written = raw.map((cell) => `1,${csvCell(cell)}`).join('\r\n')
    const read = readCsv(`a,b\r\n${written}`).rows.slice(1)
    expect(read.map((row) => row.cells[1])).toEqual(rowsOf('23_injection_neutralised.csv'))
  })

  it('gives the printed form of the published example', () => {
    expect(csvCell('=1+2";=1+2')).toBe(`"'=1+2"";=1+2"`)
  })

  it('is read back as the text it was, but for the apostrophe', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        const cell = readCsv(`a,b\n1,${csvCell(text)}\n`).rows[1]?.cells[1]
        expect([text, `'${text}`]).toContain(cell)
      }),
    )
  })
})
