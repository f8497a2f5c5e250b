import { describe, expect, it } from 'vitest'
import { isOfColumn, refusedColumn } from '../../../../renderer/rooms/stock/import-faults.ts'

describe('a fault of the columns', () => {
  it('stands at the later of two columns that hold the same', () => {
    const fault = { code: 'column-twice' }
    expect(isOfColumn(fault)).toBe(true)
    expect(refusedColumn(fault, ['code', 'name', 'ignore', 'ignore', 'code'])).toBe(4)
  })

  it('stands at the first column that could still hold the code', () => {
    const fault = { code: 'no-code-column' }
    expect(refusedColumn(fault, ['name', 'ignore', 'ignore'])).toBe(1)
    expect(refusedColumn(fault, ['name', 'grams'])).toBe(0)
  })

  it('is told above where no column mends it', () => {
    expect(isOfColumn({ code: 'column-count' })).toBe(false)
  })
})
