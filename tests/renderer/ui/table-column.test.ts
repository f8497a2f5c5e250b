import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Column, sortRows } from '../../../renderer/ui/table-column.ts'

type Row = Readonly<{ name: string; grams: number | null }>
const columns: readonly Column<Row>[] = [
  { key: 'name', head: 'Name', cell: (row) => row.name, sortBy: (row) => row.name },
  { key: 'grams', head: 'Grams', cell: (row) => row.grams, sortBy: (row) => row.grams },
]
const rows: readonly Row[] = [
  { name: 'A10', grams: 3 },
  { name: 'A2', grams: null },
  { name: 'a1', grams: 12 },
]
const names = (sorted: readonly Row[]) => sorted.map(({ name }) => name)

describe('sortRows', () => {
  it('counts as people do: 2 before 10, whatever the case', () => {
    expect(names(sortRows(rows, columns, { key: 'name', descending: false }))).toEqual([
      'a1',
      'A2',
      'A10',
    ])
  })

  it('puts what is unknown last, either way', () => {
    for (const descending of [false, true]) {
      expect(names(sortRows(rows, columns, { key: 'grams', descending })).at(-1)).toBe('A2')
    }
  })

  it('keeps the rows as they came without an order', () => {
    expect(sortRows(rows, columns, null)).toBe(rows)
  })

  it('keeps equal rows in the order they came', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 3 })), (grams) => {
        const many = grams.map((value, index) => ({ name: String(index), grams: value }))
        const sorted = sortRows(many, columns, { key: 'grams', descending: true })
        for (const [index, row] of sorted.entries()) {
          const next = sorted[index + 1]
          if (next?.grams === row.grams) expect(Number(next.name)).toBeGreaterThan(Number(row.name))
        }
      }),
    )
  })
})
