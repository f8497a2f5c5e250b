import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  formatGeometry,
  formatMillimetresExactly,
  formatThread,
} from '../../../shared-core/units/format-length.ts'
import { threadMm } from '../../../shared-core/units/length.ts'
import { parseGeometry, parseThread } from '../../../shared-core/units/parse-length.ts'

describe('parseThread and parseGeometry', () => {
  it.each([
    ['7 in', 178, 177.8],
    ['7"', 178, 177.8],
    ['1,5 m', 1500, 1500],
    ['18 cm', 180, 180],
    ['2 yd', 1829, 1828.8],
    ['5 ft 3 in', 1600, 1600.2],
    ['5\'3"', 1600, 1600.2],
    ['5′ 3″', 1600, 1600.2],
    ['114 m', 114_000, 114_000],
    ['1/2 in', 13, 12.7],
    ['1 m 20 cm', 1200, 1200],
    ['1.8 mm', 2, 1.8],
  ])('%j is %i mm of thread and %d mm of work', (text, whole, exact) => {
    expect(parseThread(text)).toMatchObject({ ok: true, value: { value: whole } })
    expect(parseGeometry(text)).toMatchObject({ ok: true, value: { value: exact } })
  })

  it.each([
    ['18', 'missing-unit'],
    ['18 g', 'unknown-unit'],
    ['3 in 5 ft', 'not-a-measure'],
    ['-2 m', 'negative'],
    ['1,500 m', 'ambiguous-number'],
    ['long', 'not-a-measure'],
    ['', 'empty'],
    ['99999999999 m', 'too-large'],
  ])('refuses %j: %s', (text, code) => {
    expect(parseThread(text)).toMatchObject({ ok: false, error: { code } })
    expect(parseGeometry(text)).toMatchObject({ ok: false, error: { code } })
  })

  it('reads a bare number in the unit it is told', () => {
    expect(parseThread('18', { unit: 'cm' })).toMatchObject({ value: { value: 180 } })
    expect(parseGeometry('1,6', { unit: 'mm', decimal: ',' })).toEqual({
      ok: true,
      value: { value: 1.6, understood: '1,6 mm' },
    })
  })

  it('refuses finished work longer than a kilometre', () => {
    expect(parseGeometry('2000 m')).toMatchObject({ error: { code: 'too-large' } })
  })

  it('reads back every length it restates', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), (tenths) => {
        const mm = tenths / 10
        const text = formatMillimetresExactly(mm, '.')
        expect(parseGeometry(text, { decimal: '.' })).toEqual({
          ok: true,
          value: { value: mm, understood: text },
        })
      }),
    )
  })
})

describe('formatThread', () => {
  it.each([
    [85, '85 mm', '3.3 in'],
    [180, '18 cm', '7.1 in'],
    [185, '18.5 cm', '7.3 in'],
    [4123, '4.12 m', '4.51 yd'],
    [12_340, '12.3 m', '13.5 yd'],
    [114_000, '114 m', '124.67 yd'],
    [-4123, '−4.12 m', '−4.51 yd'],
  ])('%i mm is %s or %s', (mm, metric, imperial) => {
    expect(formatThread(threadMm(mm), { decimal: '.' })).toBe(metric)
    expect(formatThread(threadMm(mm), { decimal: '.', system: 'imperial' })).toBe(imperial)
  })
})

describe('formatGeometry', () => {
  it('shows mm to a tenth, cm from 10 cm up, or inches', () => {
    expect(formatGeometry(18.43, { decimal: '.' })).toBe('18.4 mm')
    expect(formatGeometry(1.25, { decimal: ',' })).toBe('1,3 mm')
    expect(formatGeometry(182.4, { decimal: '.' })).toBe('18.2 cm')
    expect(formatGeometry(25.4, { decimal: '.', system: 'imperial' })).toBe('1 in')
  })
})
