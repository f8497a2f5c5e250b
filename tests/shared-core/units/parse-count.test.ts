import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatCount } from '../../../shared-core/units/format-number.ts'
import { parseCount } from '../../../shared-core/units/parse-count.ts'

describe('parseCount', () => {
  it.each([
    ['48', 48],
    ['20 St', 20],
    ['100 pcs', 100],
    ['12 500', 12_500],
    ['48.0', 48],
    ['0', 0],
  ])('reads %j as %i', (text, value) => {
    expect(parseCount(text)).toMatchObject({ ok: true, value: { value } })
  })

  it('needs a hint for 1.200', () => {
    expect(parseCount('1.200')).toMatchObject({ error: { code: 'ambiguous-number' } })
    expect(parseCount('1.200', { decimal: ',' })).toEqual({
      ok: true,
      value: { value: 1200, understood: '1200' },
    })
  })

  it.each([
    ['4.5', 'not-whole'],
    ['1/2', 'not-whole'],
    ['zwölf', 'not-a-number'],
    ['-3', 'negative'],
    ['', 'empty'],
    ['9999999999999', 'too-large'],
  ])('refuses %j: %s', (text, code) => {
    expect(parseCount(text, { line: 13 })).toMatchObject({ ok: false, error: { code, line: 13 } })
  })

  it('reads back every count it writes', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e12, max: 1e12 }), (value) => {
        expect(parseCount(formatCount(value), { allowNegative: true })).toMatchObject({
          ok: true,
          value: { value },
        })
      }),
    )
  })
})
