import { readFileSync } from 'node:fs'
import { converter, differenceCiede2000, wcagContrast } from 'culori'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ciede2000 } from '../../../shared-core/colour/ciede2000.ts'
import { CONTRAST_NEEDED, contrastRatio, inkOn } from '../../../shared-core/colour/contrast.ts'
import { type Lab, labOfHex, labOfRgb, rgbOfLab } from '../../../shared-core/colour/lab.ts'
import { finishPenalty, nearestBeads } from '../../../shared-core/colour/nearest-beads.ts'
import { byteOfLight, hexOfRgb, LIGHT_OF_BYTE, rgbOfHex } from '../../../shared-core/colour/srgb.ts'

const vectorsOf = <V>(file: string): V[] =>
  JSON.parse(readFileSync(new URL(`../../fixtures/vectors/${file}`, import.meta.url), 'utf8'))
const labOf = ([l = 0, a = 0, b = 0]: readonly number[]): Lab => ({ l, a, b })
const rgb = (hex: string) => {
  const colour = rgbOfHex(hex)
  if (colour === undefined) throw new Error(`no colour ${hex}`)
  return colour
}

const anyByte = fc.integer({ min: 0, max: 255 })
const anyRgb = fc.record({ r: anyByte, g: anyByte, b: anyByte })
const anyLab = fc.record({
  l: fc.double({ min: 0, max: 100, noNaN: true }),
  a: fc.double({ min: -128, max: 127, noNaN: true }),
  b: fc.double({ min: -128, max: 127, noNaN: true }),
})

describe('ciede2000', () => {
  type Pair = { id: string; inputs: { lab1: number[]; lab2: number[] }; expected: { dE00: number } }
  const pairs = vectorsOf<Pair>('ciede2000.json')

  it('is tried on all 34 published pairs', () => {
    expect(pairs.length).toBe(34)
  })

  it.each(pairs)('$id is the published difference, both ways', ({ inputs, expected }) => {
    const [x, y] = [labOf(inputs.lab1), labOf(inputs.lab2)]
    expect(Math.abs(ciede2000(x, y) - expected.dE00)).toBeLessThanOrEqual(0.00005)
    expect(Math.abs(ciede2000(y, x) - expected.dE00)).toBeLessThanOrEqual(0.00005)
  })

  it('agrees with an independent library everywhere', () => {
    const theirs = differenceCiede2000()
    fc.assert(
      fc.property(anyLab, anyLab, (x, y) => {
        // At exactly opposite hues the formula jumps, and the two round to different sides.
        const cross = x.a * y.b - y.a * x.b
        fc.pre(Math.abs(cross) > 1e-3 || x.a * y.a + x.b * y.b >= 0)
        const expected = theirs({ mode: 'lab65', ...x }, { mode: 'lab65', ...y })
        expect(ciede2000(x, y)).toBeCloseTo(expected, 6)
      }),
      { numRuns: 2000 },
    )
  })

  it('takes a chroma too small to be squared as none', () => {
    const grey = { l: 0, a: -8.9e-163, b: -5e-324 }
    const blue = { l: 0, a: 0, b: -0.83 }
    expect(ciede2000(blue, grey)).toBeCloseTo(ciede2000(blue, { l: 0, a: 0, b: 0 }), 12)
  })

  it('is 0 for the same colour, above 0 otherwise, and the same both ways', () => {
    fc.assert(
      fc.property(anyLab, anyLab, (x, y) => {
        expect(ciede2000(x, x)).toBe(0)
        expect(ciede2000(x, y)).toBeCloseTo(ciede2000(y, x), 6)
        expect(ciede2000(x, y)).toBeGreaterThanOrEqual(0)
      }),
    )
  })

  it('is about 100 from black to white', () => {
    expect(ciede2000(labOf([0, 0, 0]), labOf([100, 0, 0]))).toBeCloseTo(100, 6)
  })
})

describe('labOfRgb', () => {
  type Vector = { id: string; tolerance: number } & {
    inputs: { rgb8: [number, number, number] }
    expected: { lab: number[] }
  }
  it.each(vectorsOf<Vector>('srgb_lab.json'))('$id is the published Lab', (vector) => {
    const [r, g, b] = vector.inputs.rgb8
    const found = labOfRgb({ r, g, b })
    const expected = labOf(vector.expected.lab)
    for (const key of ['l', 'a', 'b'] as const) {
      expect(Math.abs(found[key] - expected[key])).toBeLessThanOrEqual(vector.tolerance)
    }
  })

  it('agrees with an independent library', () => {
    const toLab65 = converter('lab65')
    fc.assert(
      fc.property(anyRgb, ({ r, g, b }) => {
        const theirs = toLab65({ mode: 'rgb', r: r / 255, g: g / 255, b: b / 255 })
        const ours = labOfRgb({ r, g, b })
        expect(ours.l).toBeCloseTo(theirs.l, 9)
        expect(ours.a).toBeCloseTo(theirs.a, 9)
        expect(ours.b).toBeCloseTo(theirs.b, 9)
      }),
    )
  })

  it('comes back to the same colour', () => {
    fc.assert(
      fc.property(anyRgb, (colour) => {
        expect(rgbOfLab(labOfRgb(colour))).toEqual(colour)
      }),
    )
  })

  it('clips what sRGB cannot show', () => {
    expect(rgbOfLab({ l: 50, a: 120, b: -120 }).g).toBe(0)
  })
})

describe('hexOfRgb', () => {
  it('writes what rgbOfHex reads, byte by byte', () => {
    fc.assert(
      fc.property(anyRgb, (colour) => {
        expect(rgb(hexOfRgb(colour))).toEqual(colour)
      }),
    )
    expect(rgbOfHex('#00aBcD')).toEqual({ r: 0, g: 0xab, b: 0xcd })
  })

  it.each(['', '#fff', 'red', '#12345g', '#1234567'])('reads no colour in %j', (text) => {
    expect(rgbOfHex(text)).toBeUndefined()
    expect(() => labOfHex(text)).toThrow(RangeError)
  })
})

describe('byteOfLight', () => {
  it('gives every byte back', () => {
    for (let byte = 0; byte < 256; byte++) {
      expect(byteOfLight(LIGHT_OF_BYTE[byte] ?? -1)).toBe(byte)
    }
  })
})

describe('contrastRatio', () => {
  type Vector = {
    id: string
    tolerance: number
    inputs: { fg: string; bg: string }
    expected: { ratio: number; aa_normal: boolean; aa_large_or_ui: boolean; aaa_normal: boolean }
  }
  it.each(vectorsOf<Vector>('wcag_contrast.json'))('$id is the published ratio', (vector) => {
    const { fg, bg } = vector.inputs
    const { expected } = vector
    const ratio = contrastRatio(rgb(fg), rgb(bg))
    expect(Math.abs(ratio - expected.ratio)).toBeLessThanOrEqual(vector.tolerance)
    expect(ratio >= CONTRAST_NEEDED.text).toBe(expected.aa_normal)
    expect(ratio >= CONTRAST_NEEDED.largeOrControl).toBe(expected.aa_large_or_ui)
    expect(ratio >= CONTRAST_NEEDED.textEnhanced).toBe(expected.aaa_normal)
  })

  it('is the same both ways, from 1 to 21, and agrees with an independent library', () => {
    fc.assert(
      fc.property(anyRgb, anyRgb, (x, y) => {
        const ratio = contrastRatio(x, y)
        expect(ratio).toBe(contrastRatio(y, x))
        expect(ratio).toBeGreaterThanOrEqual(1)
        expect(ratio).toBeLessThanOrEqual(21)
        expect(ratio).toBeCloseTo(wcagContrast(hexOfRgb(x), hexOfRgb(y)), 6)
      }),
    )
  })
})

describe('inkOn', () => {
  it('is always readable as text', () => {
    fc.assert(
      fc.property(anyRgb, (colour) => {
        expect(contrastRatio(inkOn(colour), colour)).toBeGreaterThanOrEqual(CONTRAST_NEEDED.text)
      }),
    )
  })
})

describe('nearestBeads', () => {
  const bead = (id: string, hex: string, over = {}) => ({
    id,
    formId: 'cylinder-11/0',
    lab: labOfHex(hex),
    finish: 'opaque' as const,
    ...over,
  })
  const wetSlate = bead('wet-slate', '#4a5a66')

  it('puts the nearest colour of the same form and size first, without the bead itself', () => {
    const found = nearestBeads(wetSlate, [
      wetSlate,
      bead('rust-chain', '#8c4a2f'),
      bead('fog', '#5d6a73'),
      bead('brine', '#4b5b67', { formId: 'cylinder-15/0' }),
      bead('storm', '#4b5c69'),
    ])
    expect(found.map((near) => near.bead.id)).toEqual(['storm', 'fog', 'rust-chain'])
    expect(found[0]).toMatchObject({ finishPenalty: 0 })
    expect(found[0]?.deltaE).toBe(ciede2000(wetSlate.lab, labOfHex('#4b5c69')))
  })

  it('prefers a like finish to a slightly nearer colour', () => {
    const found = nearestBeads(wetSlate, [
      bead('same-colour-metallic', '#4a5a66', { finish: 'metallic' }),
      bead('near-opaque', '#50616e'),
    ])
    expect(found.map((near) => near.bead.id)).toEqual(['near-opaque', 'same-colour-metallic'])
  })

  it('is sorted and limited whatever it is given', () => {
    fc.assert(
      fc.property(fc.array(anyRgb, { maxLength: 20 }), fc.nat(10), (colours, limit) => {
        const beads = colours.map((colour, index) => bead(`b${index}`, hexOfRgb(colour)))
        const found = nearestBeads(wetSlate, beads, limit)
        const scores = found.map(({ score }) => score)
        expect(found.length).toBe(Math.min(limit, beads.length))
        expect(scores).toEqual(scores.toSorted((x, y) => x - y))
      }),
    )
  })
})

describe('finishPenalty', () => {
  const finishes = [
    'opaque',
    'matte',
    'gloss',
    'transparent',
    'lined',
    'metallic',
    'iridescent',
  ] as const
  it('is 0 for the same finish alone, and the same both ways', () => {
    for (const x of finishes) {
      for (const y of finishes) {
        expect(finishPenalty(x, y)).toBe(finishPenalty(y, x))
        expect(finishPenalty(x, y) === 0).toBe(x === y)
      }
    }
  })
})
