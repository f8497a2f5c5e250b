import { readFileSync } from 'node:fs'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bayerMatrix, isOn } from '../../../../shared-core/colour/picture/bayer.ts'
import { cellLines } from '../../../../shared-core/colour/picture/cell-lines.ts'
import { diffuse } from '../../../../shared-core/colour/picture/diffuse.ts'
import { bestPartner } from '../../../../shared-core/colour/picture/ordered-mix.ts'
import { runSteps } from '../../../../shared-core/colour/picture/run-steps.ts'
import { brick, peyote, square } from './layouts.ts'

type Vector = {
  id: string
  method: string
  inputs: { gray: number[]; width: number; height: number; n: number; value: number }
  expected: { out: number[]; matrix: number[][]; on: number }
}
const vectors = JSON.parse(
  readFileSync(new URL('../../../fixtures/vectors/dither.json', import.meta.url), 'utf8'),
) as Vector[]
const of = (stem: string) => vectors.filter(({ id }) => id.startsWith(stem))

/** Two levels, 0 and 255, on a layout of cells. */
function twoLevels(
  layout: ReturnType<typeof square>,
  gray: readonly number[],
  serpentine: boolean,
) {
  const into = new Uint16Array(gray.length)
  const choose = (values: Float64Array, at: number, chosen: Float64Array) => {
    const on = (values[at] ?? 0) >= 128 ? 1 : 0
    chosen[0] = 255 * on
    return on
  }
  const diffusion = { lines: cellLines(layout), x: layout.x, channels: 1, choose, serpentine }
  runSteps(diffuse(diffusion, Float64Array.from(gray), into))
  return Array.from(into, (on) => 255 * on)
}

describe('diffuse', () => {
  it.each(of('fs-'))('$id is the published dither', ({ id, inputs, expected }) => {
    const layout = square(inputs.width, inputs.height)
    const serpentine = id.endsWith('serpentine')
    expect(twoLevels(layout, inputs.gray, serpentine)).toEqual(expected.out)
  })

  it.each([
    ['square', square(60, 60)],
    ['brick', brick(60, 60)],
    ['peyote', peyote(60, 60)],
  ])('keeps the tone of a flat grey in %s', (_, layout) => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 255 }), (tone) => {
        const out = twoLevels(layout, new Array(3600).fill(tone), true)
        const mean = out.reduce((sum, value) => sum + value, 0) / out.length
        expect(Math.abs(mean - tone)).toBeLessThan(6)
      }),
      { numRuns: 30 },
    )
  })
})

describe('bayerMatrix', () => {
  it.each(of('bayer-'))('$id is the published matrix', ({ inputs, expected }) => {
    expect(bayerMatrix(inputs.n)).toEqual(expected.matrix)
  })

  it.each([0, 3, 32])('refuses a side of %i', (side) => {
    expect(() => bayerMatrix(side)).toThrow(RangeError)
  })
})

describe('isOn', () => {
  it.each(of('ordered-'))('$id is the published pattern', ({ inputs, expected }) => {
    const out = bayerMatrix(4)
      .flat()
      .map((threshold) => (isOn(inputs.value / 255, threshold, 4) ? 255 : 0))
    expect(out).toEqual(expected.out)
    expect(out.filter((value) => value > 0).length).toBe(expected.on)
  })
})

describe('bestPartner', () => {
  const blackWhiteRed = Float64Array.from([0, 0, 0, 1, 1, 1, 1, 0, 0])

  it('mixes a grey from black and white by its light', () => {
    const mix = bestPartner(blackWhiteRed, 0, { r: 0.3, g: 0.3, b: 0.3 })
    expect(mix.partner).toBe(1)
    expect(mix.share).toBeCloseTo(0.3, 9)
  })

  it('mixes a dark red from black and red', () => {
    const mix = bestPartner(blackWhiteRed, 0, { r: 0.2, g: 0, b: 0 })
    expect(mix.partner).toBe(2)
    expect(mix.share).toBeCloseTo(0.2, 9)
  })

  it('leaves a palette colour as it is', () => {
    expect(bestPartner(blackWhiteRed, 2, { r: 1, g: 0, b: 0 })).toEqual({ partner: 2, share: 0 })
  })

  it('never comes farther from the wanted light than the base alone', () => {
    const light = fc.double({ min: 0, max: 1, noNaN: true })
    fc.assert(
      fc.property(light, light, light, fc.nat(2), (r, g, b, base) => {
        const { partner, share } = bestPartner(blackWhiteRed, base, { r, g, b })
        const off = (amounts: readonly number[]) =>
          amounts.reduce((sum, amount, i) => sum + (amount - ([r, g, b][i] ?? 0)) ** 2, 0)
        const at = (index: number) => blackWhiteRed.slice(3 * index, 3 * index + 3)
        const mixed = Array.from(at(base), (amount, i) => {
          return amount + share * ((at(partner)[i] ?? 0) - amount)
        })
        expect(off(mixed)).toBeLessThanOrEqual(off([...at(base)]) + 1e-12)
      }),
    )
  })
})
