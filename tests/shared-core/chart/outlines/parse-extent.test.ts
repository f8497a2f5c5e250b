import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Extent, parseExtent } from '../../../../shared-core/chart/outlines/parse-extent.ts'

function read(text: string, decimal: '.' | ',' = '.'): Extent | string {
  const outcome = parseExtent(text, { decimal })
  return outcome.ok ? outcome.value.value : outcome.error.code
}

describe('parseExtent', () => {
  it.each([
    ['40 mm', { kind: 'mm', mm: 40 }],
    ['4 cm', { kind: 'mm', mm: 40 }],
    ['1.5 in', { kind: 'mm', mm: 38.1 }],
    ['2"', { kind: 'mm', mm: 50.8 }],
    ['24 beads', { kind: 'beads', count: 24 }],
    ['1 bead', { kind: 'beads', count: 1 }],
    ['30 rows', { kind: 'beads', count: 30 }],
    ['24', { kind: 'beads', count: 24 }],
  ] as const)('reads %s', (text, extent) => {
    expect(read(text)).toEqual(extent)
  })

  it('reads the decimal comma of a workshop that writes one', () => {
    expect(read('1,5 in', ',')).toEqual({ kind: 'mm', mm: 38.1 })
    expect(read('38,4 mm', ',')).toEqual({ kind: 'mm', mm: 38.4 })
  })

  it.each([
    ['', 'empty'],
    ['wide', 'not-a-measure'],
    ['2.5 beads', 'not-whole'],
    ['-3', 'negative'],
    ['0', 'no-extent'],
    ['0 mm', 'no-extent'],
    ['3 parsecs', 'unknown-unit'],
    ['4000 m', 'too-large'],
  ] as const)('refuses “%s” as %s', (text, code) => {
    expect(read(text)).toBe(code)
  })

  it('says in words what it understood', () => {
    expect(parseExtent('24')).toMatchObject({ ok: true, value: { understood: '24 beads' } })
    expect(parseExtent('1 row')).toMatchObject({ ok: true, value: { understood: '1 row' } })
    expect(parseExtent('1.5 in')).toMatchObject({ ok: true, value: { understood: '38.1 mm' } })
  })

  it('counts any whole number of beads as it stands', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), (count) => {
        expect(read(`${count}`)).toEqual({ kind: 'beads', count })
        expect(read(`${count} mm`)).toEqual(
          count <= 1_000_000 ? { kind: 'mm', mm: count } : 'too-large',
        )
      }),
    )
  })
})
