import { wcagLuminance } from 'culori'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { shade, withAlpha } from '../../../renderer/drawing/colour-shades.ts'

const anyHex = fc
  .integer({ min: 0, max: 0xffffff })
  .map((value) => `#${value.toString(16).padStart(6, '0')}`)

describe('shade', () => {
  it('lightens and darkens every colour, or leaves it where it can go no further', () => {
    fc.assert(
      fc.property(anyHex, (hex) => {
        const own = wcagLuminance(hex)
        expect(wcagLuminance(shade(hex, { l: 0.12, c: 0.9 }))).toBeGreaterThanOrEqual(own - 0.02)
        expect(wcagLuminance(shade(hex, { l: -0.12, c: 0.9 }))).toBeLessThanOrEqual(own + 0.02)
      }),
    )
  })

  it('keeps a lit side on black and a shaded one on white', () => {
    expect(shade('#000000', { l: 0.2 })).not.toBe('#000000')
    expect(shade('#ffffff', { l: -0.2 })).not.toBe('#ffffff')
    expect(shade('#ffffff', { l: 0.2 })).toBe('#ffffff')
  })

  it('writes alpha as the canvas reads it', () => {
    expect(withAlpha('#102030', 0.5)).toBe('rgb(16 32 48 / 0.5)')
  })
})
