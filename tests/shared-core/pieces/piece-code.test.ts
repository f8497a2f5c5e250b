import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isPieceCode, pieceCode, pieceSeries } from '../../../shared-core/pieces/piece-code.ts'

const anyName = fc.string({ unit: 'grapheme', maxLength: 40 })
const anySerial = fc.integer({ min: 1, max: 99_999 })

describe('pieceSeries', () => {
  it.each([
    ['Tidewrack diamond earrings', 'TD'],
    ['Überflut', 'UB'],
    ['mudflat-band', 'MB'],
    ['Quick otter', 'UT'],
    ['Io', 'XX'],
    ['', 'XX'],
    ['3 reeds', 'RE'],
  ])('takes from %j the letters %s', (name, series) => {
    expect(pieceSeries(name)).toBe(series)
  })

  it('gives two letters that a code can begin with, for any name', () => {
    fc.assert(
      fc.property(anyName, anySerial, (name, serial) => {
        expect(isPieceCode(pieceCode(pieceSeries(name), serial))).toBe(true)
      }),
    )
  })
})

describe('pieceCode', () => {
  it.each([
    // T is 16 and D is 3, counted from 0: 16 x 2 + 3 x 3 + 7 x 7 = 90 = 3 x 23 + 21, the letter Y.
    ['TD', 7, 'TD-0007Y'],
    // A is 0: 1 x 7 = 7, the letter H.
    ['AA', 1, 'AA-0001H'],
    ['ZZ', 12_345, 'ZZ-12345'],
  ])('gives %s and %i the code %s', (series, serial, code) => {
    expect(pieceCode(series, serial).slice(0, code.length)).toBe(code)
  })

  it('takes another letter or digit for no code of its length', () => {
    const letters = 'ABCDEFGHJKLMNPRSTUVWXYZ'
    fc.assert(
      fc.property(anyName, anySerial, fc.nat(), fc.nat(), (name, serial, place, other) => {
        const code = pieceCode(pieceSeries(name), serial)
        const at = place % code.length
        const old = code.charAt(at)
        const pool = /\d/.test(old) ? '0123456789' : letters
        const read = pool.charAt(other % pool.length)
        fc.pre(old !== '-' && read !== old)
        expect(isPieceCode(code.slice(0, at) + read + code.slice(at + 1))).toBe(false)
      }),
    )
  })

  it('takes two neighbours swapped for no code', () => {
    fc.assert(
      fc.property(anyName, anySerial, fc.nat(), (name, serial, place) => {
        const code = pieceCode(pieceSeries(name), serial)
        const at = place % (code.length - 1)
        const [a, b] = [code.charAt(at), code.charAt(at + 1)]
        fc.pre(a !== b && /\d\d|[A-Z][A-Z]/.test(a + b))
        expect(isPieceCode(code.slice(0, at) + b + a + code.slice(at + 2))).toBe(false)
      }),
    )
  })

  it('is read with small letters, spaces and without its dash', () => {
    expect(isPieceCode(' td 0007y ')).toBe(true)
    expect(isPieceCode('td-0007a')).toBe(false)
  })

  it.each([
    ['TD', 0],
    ['TD', 1.5],
    ['IO', 1],
    ['T', 1],
  ])('throws for %j and %d', (series, serial) => {
    expect(() => pieceCode(series, serial)).toThrow(RangeError)
  })
})
