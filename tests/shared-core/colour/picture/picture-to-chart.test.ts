import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ciede2000, deltaE2000 } from '../../../../shared-core/colour/ciede2000.ts'
import { labOfHex, labOfRgb } from '../../../../shared-core/colour/lab.ts'
import { chooseBeads } from '../../../../shared-core/colour/picture/choose-beads.ts'
import { labOfEven, writeEven } from '../../../../shared-core/colour/picture/even-space.ts'
import { freePalette } from '../../../../shared-core/colour/picture/free-palette.ts'
import { PaletteMatcher } from '../../../../shared-core/colour/picture/palette-matcher.ts'
import type { Picture } from '../../../../shared-core/colour/picture/picture.ts'
import {
  checkPictureRequest,
  type PictureRequest,
} from '../../../../shared-core/colour/picture/picture-request.ts'
import { pictureToChart } from '../../../../shared-core/colour/picture/picture-to-chart.ts'
import { runSteps } from '../../../../shared-core/colour/picture/run-steps.ts'
import { sampleCells } from '../../../../shared-core/colour/picture/sample-cells.ts'
import { hexOfRgb, rgbOfHex } from '../../../../shared-core/colour/srgb.ts'
import { paintPicture } from '../../../fixtures/picture-generator.ts'
import { brick, peyote, square } from './layouts.ts'

/** A picture from rows of `#rrggbb` or `#rrggbbaa`. */
function pictureOf(rows: readonly (readonly string[])[]): Picture {
  const bytes = rows.flat().flatMap((hex) => {
    const rgb = rgbOfHex(hex.slice(0, 7))
    if (rgb === undefined) throw new Error(`no colour ${hex}`)
    return [rgb.r, rgb.g, rgb.b, hex.length > 7 ? Number.parseInt(hex.slice(7), 16) : 255]
  })
  return { rgba: Uint8Array.from(bytes), width: rows[0]?.length ?? 0, height: rows.length }
}

const checkerboard = pictureOf([
  ['#000000', '#ffffff'],
  ['#ffffff', '#000000'],
])

function request(over: Partial<PictureRequest> = {}): PictureRequest {
  return {
    picture: paintPicture('shore', 80, 60),
    cells: brick(20, 15),
    fit: 'stretch',
    colours: { kind: 'free', count: 12 },
    dithering: 'none',
    smallestPatch: 1,
    ...over,
  }
}

function chartOf(over: Partial<PictureRequest> = {}) {
  const checked = checkPictureRequest(request(over))
  if (!checked.ok) throw new Error(checked.error.map(({ message }) => message).join(' '))
  const outcome = runSteps(pictureToChart(checked.value))
  if (outcome.kind === 'cancelled') throw new Error('nobody cancelled')
  return outcome.value
}

function lightOf(picture: Picture, cells = square(1, 1), fit: PictureRequest['fit'] = 'stretch') {
  const crop = { x: 0, y: 0, width: picture.width, height: picture.height }
  const outcome = runSteps(sampleCells(picture, crop, cells, fit))
  if (outcome.kind === 'cancelled') throw new Error('nobody cancelled')
  return { light: [...outcome.value.light], cover: [...outcome.value.cover] }
}

describe('sampleCells', () => {
  it('averages light, not bytes: black and white make half the light', () => {
    expect(lightOf(checkerboard)).toEqual({ light: [0.5, 0.5, 0.5], cover: [1] })
  })

  it('counts a pixel on the border by the share inside', () => {
    const stripes = pictureOf([['#ff0000', '#000000', '#0000ff']])
    const { light } = lightOf(stripes, square(2, 1))
    const third = 1 / 3
    for (const [i, expected] of [2 * third, 0, 0, 0, 0, 2 * third].entries()) {
      expect(light[i]).toBeCloseTo(expected, 12)
    }
  })

  it('counts see-through pixels by their alpha', () => {
    const { light, cover } = lightOf(pictureOf([['#ff0000ff', '#00ff0033']]))
    expect(light[0]).toBeCloseTo(1 / 1.2, 12)
    expect(light[1]).toBeCloseTo(0.2 / 1.2, 12)
    expect(cover[0]).toBeCloseTo(0.6, 12)
  })

  it('leaves cells outside a contained picture uncovered, and fills all when it covers', () => {
    const wide = pictureOf([['#ff0000', '#ff0000', '#ff0000']])
    expect(lightOf(wide, square(3, 3), 'contain').cover).toEqual([0, 0, 0, 1, 1, 1, 0, 0, 0])
    const { cover } = lightOf(wide, square(3, 3), 'cover')
    for (const share of cover) expect(share).toBeCloseTo(1, 12)
  })

  it.each([
    ['square', square(7, 5)],
    ['brick', brick(7, 5)],
    ['peyote', peyote(7, 5)],
  ])('gives every %s cell of a flat picture its colour, whole', (_, cells) => {
    const flat = pictureOf([['#c08040', '#c08040', '#c08040']])
    const { light, cover } = lightOf(flat, cells)
    const [r = 0] = lightOf(flat).light
    for (let cell = 0; cell < cover.length; cell++) {
      expect(cover[cell]).toBeCloseTo(1, 9)
      expect(light[3 * cell]).toBeCloseTo(r, 9)
    }
  })

  it('keeps the light of the whole picture, however it is cut into square cells', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: 1, max: 9 }),
        (across, down) => {
          const picture = paintPicture('shore', 23, 17)
          const [whole = 0] = lightOf(picture).light
          const { light } = lightOf(picture, square(across, down))
          const reds = light.filter((_, i) => i % 3 === 0)
          expect(reds.reduce((sum, red) => sum + red, 0) / reds.length).toBeCloseTo(whole, 9)
        },
      ),
    )
  })
})

describe('writeEven', () => {
  it('is undone by labOfEven', () => {
    const byte = fc.integer({ min: 0, max: 255 })
    fc.assert(
      fc.property(byte, byte, byte, (r, g, b) => {
        const lab = labOfRgb({ r, g, b })
        const even = new Float64Array(3)
        writeEven(Float64Array.from([lab.l, lab.a, lab.b]), even, 0, 1)
        const back = labOfEven(even[0] ?? 0, even[1] ?? 0, even[2] ?? 0)
        expect(ciede2000(lab, back)).toBeLessThan(1e-4)
      }),
    )
  })
})

const labsOf = (hexes: readonly string[]) =>
  Float64Array.from(
    hexes.flatMap((hex) => {
      const { l, a, b } = labOfHex(hex)
      return [l, a, b]
    }),
  )
const evensOf = (labs: Float64Array) => {
  const evens = new Float64Array(labs.length)
  writeEven(labs, evens, 0, labs.length / 3)
  return evens
}
const anyHex = fc
  .record({ r: fc.nat(255), g: fc.nat(255), b: fc.nat(255) })
  .map((colour) => hexOfRgb(colour))

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

function finished<P, T>(steps: Generator<P, T>): T {
  const outcome = runSteps(steps)
  if (outcome.kind === 'cancelled') throw new Error('nobody cancelled')
  return outcome.value
}

describe('chooseBeads', () => {
  it('chooses as well as trying every set, or nearly', () => {
    const beads = fc.uniqueArray(anyHex, { minLength: 4, maxLength: 8 })
    fc.assert(
      fc.property(beads, fc.array(anyHex, { minLength: 1, maxLength: 12 }), (hexes, wanted) => {
        const [labs, targets] = [labsOf(hexes), labsOf(wanted)]
        const costOf = (chosen: readonly number[]) =>
          wanted.reduce((sum, hex) => {
            const lab = labOfHex(hex)
            const to = chosen.map((j) => ciede2000(lab, labOfHex(hexes[j] ?? '#000000')))
            return sum + Math.min(...to)
          }, 0)
        const pairs = hexes.flatMap((_, i) => hexes.slice(0, i).map((_, j) => [i, j]))
        const least = Math.min(...pairs.map(costOf))
        const chosen = finished(chooseBeads(evensOf(targets), labs, evensOf(labs), 2))
        expect(chosen.length).toBe(2)
        expect(costOf(chosen)).toBeLessThanOrEqual(1.3 * least + 1)
      }),
    )
  })
})

describe('chooseBeads of thousands of beads', () => {
  it('can be stopped at any of many small steps, each a little further', () => {
    const hexAt = (i: number) => `#${((i * 2_654_435) % 0xffffff).toString(16).padStart(6, '0')}`
    const labs = labsOf(Array.from({ length: 1_500 }, (_, i) => hexAt(i + 1)))
    const targets = evensOf(labsOf(Array.from({ length: 6_000 }, (_, i) => hexAt(7 * i + 3))))
    const work = chooseBeads(targets, labs, evensOf(labs), 60)
    const steps = Array.from({ length: 100 }, () => work.next())
    expect(steps.every(({ done }) => done === false)).toBe(true)
    const shares = steps.map(({ value }) => value as number)
    expect(shares).toEqual(shares.toSorted((a, b) => a - b))
    expect(shares.at(-1)).toBeLessThanOrEqual(1)
    expect(work.return([])).toEqual({ done: true, value: [] })
  })
})

describe('pictureToChart', () => {
  it('turns four blocks of colour into those four colours', () => {
    const [red, green, blue, white] = ['#b03020', '#208040', '#2040a0', '#f8f8f8']
    const picture = pictureOf([
      [red, red, green, green],
      [red, red, green, green],
      [blue, blue, white, white],
      [blue, blue, white, white],
    ] as string[][])
    const chart = chartOf({ picture, cells: square(2, 2), colours: { kind: 'free', count: 4 } })
    const colours = Array.from(chart.slots, (slot) => chart.palette[slot - 1]?.hex)
    expect(colours).toEqual([red, green, blue, white])
    expect(chart.meanDeltaE).toBeLessThan(1e-6)
    expect(chart.palette.map(({ count }) => count)).toEqual([1, 1, 1, 1])
  })

  it('uses beads at hand only, and names them', () => {
    const beads = [
      { id: 'brine', hex: '#3a6a78' },
      { id: 'oyster-shell', hex: '#e8e0d0' },
      { id: 'rust-chain', hex: '#8C4A2F' },
      { id: 'eelgrass', hex: '#5a6b2e' },
    ]
    const chart = chartOf({ colours: { kind: 'beads', beads, most: 3 } })
    expect(chart.palette.length).toBeLessThanOrEqual(3)
    for (const { beadId, hex } of chart.palette) {
      expect(beads.find(({ id }) => id === beadId)?.hex.toLowerCase()).toBe(hex)
    }
  })

  it('leaves see-through cells empty, or lays them on a background', () => {
    const picture = pictureOf([['#ff0000ff', '#00000000']])
    const cells = square(2, 1)
    expect([...chartOf({ picture, cells }).slots]).toEqual([1, 0])
    const laid = chartOf({ picture, cells, background: '#0000ff' })
    expect(laid.palette.map(({ hex }) => hex).toSorted()).toEqual(['#0000ff', '#ff0000'])
  })

  it('makes an empty chart of a picture that cannot be seen', () => {
    const chart = chartOf({ picture: pictureOf([['#12345600']]), cells: square(2, 2) })
    expect(chart).toMatchObject({ palette: [], meanDeltaE: 0, recoloured: 0 })
    expect([...chart.slots]).toEqual([0, 0, 0, 0])
  })

  it('reads the crop alone', () => {
    const picture = pictureOf([['#ff0000', '#00ff00', '#0000ff']])
    const crop = { x: 1, y: 0, width: 1, height: 1 }
    expect(chartOf({ picture, crop, cells: square(1, 1) }).palette[0]?.hex).toBe('#00ff00')
  })

  it('makes tones lighter, flatter and greyer as asked', () => {
    const lightest = (over: Partial<PictureRequest>) => {
      const ls = chartOf(over).palette.map(({ hex }) => labOfHex(hex))
      return {
        l: Math.max(...ls.map(({ l }) => l)),
        a: Math.max(...ls.map(({ a }) => Math.abs(a))),
      }
    }
    const plain = lightest({})
    expect(lightest({ tone: { lightness: 5, contrast: 1, chroma: 1 } }).l).toBeGreaterThan(plain.l)
    expect(lightest({ tone: { lightness: 0, contrast: 0.5, chroma: 1 } }).l).toBeLessThan(plain.l)
    expect(lightest({ tone: { lightness: 0, contrast: 1, chroma: 0 } }).a).toBeLessThan(0.5)
  })

  it('loses less with more colours, in every dithering', () => {
    for (const dithering of ['none', 'diffusion', 'ordered'] as const) {
      const mean = (count: number) =>
        chartOf({ dithering, colours: { kind: 'free', count } }).meanDeltaE
      expect(mean(24)).toBeLessThan(mean(6))
    }
  })

  it.each(['diffusion', 'ordered'] as const)(
    'keeps the mean light of a grey by %s',
    (dithering) => {
      const chart = chartOf({
        picture: pictureOf([['#808080']]),
        cells: brick(40, 40),
        dithering,
        colours: {
          kind: 'beads',
          beads: [
            { id: 'jet', hex: '#000000' },
            { id: 'fog', hex: '#ffffff' },
          ],
        },
      })
      const white = chart.palette.find(({ beadId }) => beadId === 'fog')?.count ?? 0
      // #808080 gives 0.216 of white's light.
      expect(white / 1600).toBeGreaterThan(0.19)
      expect(white / 1600).toBeLessThan(0.24)
    },
  )

  it('counts what it says, whatever is asked', () => {
    const any = fc.record({
      cells: fc.constantFrom(square(9, 8), brick(12, 7), peyote(8, 9)),
      fit: fc.constantFrom('stretch', 'cover', 'contain'),
      dithering: fc.constantFrom('none', 'diffusion', 'ordered'),
      smallestPatch: fc.integer({ min: 1, max: 6 }),
      colours: fc.integer({ min: 1, max: 20 }).map((count) => ({ kind: 'free', count }) as const),
    })
    const picture = paintPicture('hues', 40, 25)
    fc.assert(
      fc.property(any, (over) => {
        const chart = chartOf({ picture, ...over })
        const beads = chart.slots.filter((slot) => slot > 0).length
        const counts = chart.palette.map(({ count }) => count)
        expect(counts.reduce((sum, count) => sum + count, 0)).toBe(beads)
        expect(counts).toEqual(counts.toSorted((a, b) => b - a))
        expect(chart.palette.length).toBeLessThanOrEqual(over.colours.count)
        expect(Math.max(...chart.slots)).toBe(chart.palette.length)
        expect(chart.meanDeltaE).toBeLessThanOrEqual(chart.worstDeltaE)
        expect(chartOf({ picture, ...over })).toEqual(chart)
      }),
      { numRuns: 40 },
    )
  })

  it('reports rising progress stage by stage, and stops when told to', () => {
    const stages: string[] = []
    const big = request({ cells: brick(150, 100), dithering: 'diffusion', smallestPatch: 2 })
    runSteps(pictureToChart(big), ({ stage, done }) => {
      expect(done).toBeGreaterThanOrEqual(0)
      expect(done).toBeLessThan(1)
      if (stages.at(-1) !== stage) stages.push(stage)
      return true
    })
    expect(stages).toEqual(['sampling', 'choosing', 'matching', 'tidying'])
    let asked = 0
    const cancelled = runSteps(pictureToChart(big), () => ++asked < 3)
    expect(cancelled).toEqual({ kind: 'cancelled' })
    expect(asked).toBe(3)
  })
})

describe('checkPictureRequest', () => {
  const bead = { id: 'brine', hex: '#3a6a78' }
  it.each([
    ['picture-size', { picture: { rgba: new Uint8Array(3), width: 1, height: 1 } }],
    ['picture-crop', { crop: { x: 70, y: 0, width: 20, height: 10 } }],
    ['picture-crop', { crop: { x: 0, y: 0, width: Number.NaN, height: 10 } }],
    ['picture-cells', { cells: { x: [], y: [], pitchX: 1, pitchY: 1 } }],
    ['picture-cells', { cells: { x: [0], y: [Number.NaN], pitchX: 1, pitchY: 1 } }],
    ['picture-cells', { cells: { x: [0], y: [0], pitchX: 0, pitchY: 1 } }],
    ['picture-colours', { colours: { kind: 'free', count: 0 } }],
    ['picture-beads', { colours: { kind: 'beads', beads: [] } }],
    ['picture-bead-colour', { colours: { kind: 'beads', beads: [{ ...bead, hex: 'blue' }] } }],
    ['picture-background', { background: 'white' }],
    ['picture-smallest-patch', { smallestPatch: 0 }],
    ['picture-tone', { tone: { lightness: 0, contrast: Number.NaN, chroma: 1 } }],
  ] as const)('refuses by %s, saying what to do', (code, over) => {
    const checked = checkPictureRequest(request(over))
    expect(!checked.ok && checked.error.map((refusal) => refusal.code)).toEqual([code])
  })
})
