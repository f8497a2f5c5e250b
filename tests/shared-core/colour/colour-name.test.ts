import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ciede2000 } from '../../../shared-core/colour/ciede2000.ts'
import { colourName, colourNames } from '../../../shared-core/colour/colour-name.ts'
import { differenceWords } from '../../../shared-core/colour/difference-words.ts'
import { labOfHex } from '../../../shared-core/colour/lab.ts'
import { nearestColour } from '../../../shared-core/colour/nearest-colour.ts'

const anyHex = fc
  .integer({ min: 0, max: 0xffffff })
  .map((rgb) => `#${rgb.toString(16).padStart(6, '0')}`)

describe('colourName', () => {
  it.each([
    ['#000000', 'black'],
    ['#ffffff', 'white'],
    ['#808080', 'grey'],
    ['#d01818', 'red'],
    ['#f08a1e', 'orange'],
    ['#f2d21a', 'light yellow'],
    ['#2f9a3a', 'green'],
    ['#1f8f94', 'teal'],
    ['#1d2b6d', 'dark blue'],
    ['#7a4a24', 'brown'],
    ['#7b3fa8', 'violet'],
    ['#e9dfd0', 'cream'],
  ])('calls %s %s', (hex, name) => {
    expect(colourName(hex)).toBe(name)
  })

  it('names every colour', () => {
    fc.assert(
      fc.property(anyHex, (hex) => {
        expect(colourName(hex)).toMatch(/^[a-z]+( [a-z]+)?$/)
      }),
    )
  })
})

describe('colourNames', () => {
  it('tells colours of one name apart', () => {
    expect(colourNames(['#d01818', '#c81e1e', '#000000'])).toEqual(['red', 'red 2', 'black'])
  })
})

describe('nearestColour', () => {
  it('gives none of none', () => expect(nearestColour('#000000', [])).toBeUndefined())

  it('gives one that no other is nearer than', () => {
    fc.assert(
      fc.property(anyHex, fc.array(anyHex, { minLength: 1, maxLength: 8 }), (wanted, hexes) => {
        const found = nearestColour(
          wanted,
          hexes.map((colourHex) => ({ colourHex })),
        )
        const away = hexes.map((hex) => ciede2000(labOfHex(wanted), labOfHex(hex)))
        expect(found?.deltaE).toBe(Math.min(...away))
        expect(found?.one.colourHex).toBe(hexes[away.indexOf(Math.min(...away))])
      }),
    )
  })
})

describe('differenceWords', () => {
  it('grows with the difference', () => {
    expect([0, 2, 4, 7, 15, 40].map(differenceWords)).toEqual([
      'the same to the eye',
      'hardly to be told apart',
      'close, seen when looked for',
      'different at a glance',
      'far off',
      'not the colours of the picture',
    ])
  })
})
