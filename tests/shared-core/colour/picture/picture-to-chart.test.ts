import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { labOfHex } from '../../../../shared-core/colour/lab.ts'
import {
  checkPictureRequest,
  type PictureRequest,
} from '../../../../shared-core/colour/picture/picture-request.ts'
import { pictureToChart } from '../../../../shared-core/colour/picture/picture-to-chart.ts'
import { runSteps } from '../../../../shared-core/colour/picture/run-steps.ts'
import { paintPicture } from '../../../fixtures/picture-generator.ts'
import { brick, peyote, square } from './layouts.ts'
import { pictureOf } from './picture-of.ts'
import { shoreRequest } from './shore-request.ts'

function chartOf(over: Partial<PictureRequest> = {}) {
  const checked = checkPictureRequest(shoreRequest(over))
  if (!checked.ok) throw new Error(checked.error.map(({ message }) => message).join(' '))
  const outcome = runSteps(pictureToChart(checked.value))
  if (outcome.kind === 'cancelled') throw new Error('nobody cancelled')
  return outcome.value
}

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
    const big = shoreRequest({ cells: brick(150, 100), dithering: 'diffusion', smallestPatch: 2 })
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
