import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { deltaE2000 } from '../../../../shared-core/colour/ciede2000.ts'
import { freePalette } from '../../../../shared-core/colour/picture/free-palette.ts'
import { PaletteMatcher } from '../../../../shared-core/colour/picture/palette-matcher.ts'
import { hexOfRgb } from '../../../../shared-core/colour/srgb.ts'
import { paintPicture } from '../../../fixtures/picture-generator.ts'
import { anyHex, evensOf, labsOf } from './some-colours.ts'

describe('PaletteMatcher', () => {
  const best = (labs: Float64Array, palette: Float64Array, i: number) => {
    const to = (j: number) =>
      deltaE2000(
        labs[3 * i] ?? 0,
        labs[3 * i + 1] ?? 0,
        labs[3 * i + 2] ?? 0,
        palette[3 * j] ?? 0,
        palette[3 * j + 1] ?? 0,
        palette[3 * j + 2] ?? 0,
      )
    const all = Array.from({ length: palette.length / 3 }, (_, j) => to(j))
    return { least: Math.min(...all), to }
  }

  it('finds the bead nearest by CIEDE2000, or one hardly farther', () => {
    const beads = fc.array(anyHex, { minLength: 1, maxLength: 60 })
    fc.assert(
      fc.property(beads, fc.array(anyHex, { minLength: 1, maxLength: 20 }), (palette, wanted) => {
        const [labs, paletteLabs] = [labsOf(wanted), labsOf(palette)]
        const matcher = new PaletteMatcher(paletteLabs)
        for (let i = 0; i < wanted.length; i++) {
          const { least, to } = best(labs, paletteLabs, i)
          const found = to(matcher.match(labs, evensOf(labs), i))
          expect(found).toBeLessThanOrEqual(1.25 * least + 1e-9)
        }
      }),
    )
  })

  it('finds the very nearest for all but one in a thousand cells of a picture of every hue', () => {
    const { rgba } = paintPicture('hues', 60, 40)
    const hexes = Array.from({ length: rgba.length / 4 }, (_, i) => {
      return hexOfRgb({ r: rgba[4 * i] ?? 0, g: rgba[4 * i + 1] ?? 0, b: rgba[4 * i + 2] ?? 0 })
    })
    const labs = labsOf(hexes)
    const evens = evensOf(labs)
    const palette = labsOf(freePalette(evens, 30))
    const matcher = new PaletteMatcher(palette)
    const missed = hexes.filter((_, i) => {
      const { least, to } = best(labs, palette, i)
      return to(matcher.match(labs, evens, i)) > least + 1e-9
    })
    expect(missed.length).toBeLessThanOrEqual(hexes.length / 1000)
  })

  it('does not depend on what it was asked before', () => {
    const palette = labsOf(freePalette(evensOf(labsOf(['#123456', '#fedcba', '#00ff00'])), 3))
    const labs = labsOf(['#204060', '#f0d0b0', '#10f010', '#204060'])
    const matcher = new PaletteMatcher(palette)
    const found = [0, 1, 2, 3].map((i) => matcher.match(labs, evensOf(labs), i))
    expect(found[3]).toBe(found[0])
  })

  it('finds the same in a palette too long for lists', () => {
    const hexes = Array.from({ length: 700 }, (_, i) => {
      return hexOfRgb({ r: (i * 37) % 256, g: (i * 91) % 256, b: (i * 53) % 256 })
    })
    const labs = labsOf(hexes)
    const matcher = new PaletteMatcher(labs)
    for (const i of [0, 13, 699]) {
      const found = matcher.match(labs, evensOf(labs), i)
      expect(best(labs, labs, i).to(found)).toBe(0)
    }
  })
})
