import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { freePalette } from '../../../../shared-core/colour/picture/free-palette.ts'
import { anyHex, evensOf, labsOf } from './some-colours.ts'

describe('freePalette', () => {
  it('gives back the colours of a picture that has no more than asked for', () => {
    const hexes = ['#102030', '#c0a080', '#30f0a0', '#ffffff']
    expect([...freePalette(evensOf(labsOf(hexes)), 8)].toSorted()).toEqual(hexes.toSorted())
  })

  it('never gives more than asked for, and is the same every time', () => {
    const colours = fc.array(anyHex, { minLength: 1, maxLength: 80 })
    fc.assert(
      fc.property(colours, fc.integer({ min: 1, max: 20 }), (hexes, count) => {
        const even = evensOf(labsOf(hexes))
        const palette = freePalette(even, count)
        expect(palette.length).toBeLessThanOrEqual(count)
        expect(palette.length).toBeGreaterThan(0)
        expect(freePalette(even, count)).toEqual(palette)
      }),
      { numRuns: 30 },
    )
  })
})
