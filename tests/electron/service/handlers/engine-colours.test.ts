import { readFileSync } from 'node:fs'
import { afterAll, describe, expect, it } from 'vitest'
import { engineInputs, fourPixels } from '../engine-inputs.ts'
import { openEngine } from '../open-engine.ts'

const { ask, refusal, close } = await openEngine()
afterAll(close)

const FORM = 'cylinder-11/0'
const square = { kind: 'block', stitch: 'square', columns: 2, rows: 2 } as const
const picture = {
  picture: { rgbaBase64: fourPixels, width: 2, height: 2 },
  onto: square,
  formId: FORM,
  fit: 'stretch',
  dithering: 'none',
  smallestPatch: 1,
} as const

describe('a picture as a chart', () => {
  it('gives each cell the colour of its pixel and leaves see-through cells empty', async () => {
    const { chart, palette, beads, meanDeltaE } = await ask('engine.picture', {
      ...picture,
      colours: { kind: 'free', count: 3 },
    })
    const hexes = new Map(palette.map(({ label, hex }) => [`1${label}`, hex]))
    const rows = chart.rows.map(({ cells }) => cells.split(' ').map((run) => hexes.get(run)))
    expect(rows).toEqual([
      [
        expect.stringMatching(/^#c[78]1[def]1[def]$/),
        expect.stringMatching(/^#1[def]1[def]c[789]$/),
      ],
      [expect.stringMatching(/^#1[def](9f|a[01])1[def]$/), undefined],
    ])
    expect(beads).toBe(3)
    expect(meanDeltaE).toBeLessThan(0.5)
  })

  it('takes only beads at hand, at most as many as asked, and names them', async () => {
    const { palette } = await ask('engine.picture', {
      ...picture,
      background: '#ffffff',
      colours: {
        kind: 'beads',
        beads: [
          { id: 'brick', hex: '#b03030' },
          { id: 'brine', hex: '#3040c0' },
          { id: 'sedge', hex: '#309030' },
          { id: 'shell', hex: '#f8f8f8' },
          { id: 'soot', hex: '#101010' },
        ],
        most: 4,
      },
    })
    expect(palette.map(({ beadId }) => beadId).toSorted()).toEqual([
      'brick',
      'brine',
      'sedge',
      'shell',
    ])
  })

  it('colours the beads of a chart of any shape, and no more', async () => {
    const chart = {
      stitch: 'brick' as const,
      rows: [
        { start: 1, cells: '1A' },
        { start: 0, cells: '2A' },
      ],
    }
    const painted = await ask('engine.picture', {
      ...picture,
      background: '#ffffff',
      onto: { kind: 'chart', chart },
      colours: { kind: 'free', count: 1 },
    })
    expect(painted.chart).toEqual(chart)
  })

  it.each([
    ['picture-size', { picture: { rgbaBase64: 'AAAA', width: 2, height: 2 } }],
    ['picture-cells', { onto: { ...square, columns: 100_000, rows: 100_000 } }],
    ['picture-colours', { colours: { kind: 'free', count: 0 } }],
    ['picture-crop', { crop: { x: 1, y: 0, width: 2, height: 2 } }],
    ['unknown-form', { formId: 'no-such-form' }],
  ])('refuses %s', async (code, wrong) => {
    const input = { ...engineInputs['engine.picture'], ...wrong }
    expect((await refusal('engine.picture', input))?.code).toBe(code)
  })
})

describe('colours', () => {
  it('gives the published CIEDE2000 of all 34 pairs to four decimals', async () => {
    const published: readonly Pair[] = JSON.parse(readFileSync(VECTORS, 'utf8'))
    const pairs = published.map(({ inputs: { lab1, lab2 } }): [Lab, Lab] => [
      asLab(lab1),
      asLab(lab2),
    ])
    const { differences } = await ask('engine.colourDifference', { pairs })
    expect(differences).toHaveLength(34)
    published.forEach(({ expected }, i) => {
      expect(differences[i]).toBeCloseTo(expected.dE00, 4)
    })
  })

  it('puts the nearest bead of the same form first', async () => {
    const bead = (id: string, colourHex: string, formId: string = FORM) =>
      ({ id, formId, colourHex, finish: 'opaque' }) as const
    const { beads } = await ask('engine.nearestBeads', {
      wanted: bead('a', '#406080'),
      candidates: [bead('far', '#a02020'), bead('near', '#416182'), bead('other', '#406080', 'x')],
    })
    expect(beads.map(({ id }) => id)).toEqual(['near', 'far'])
  })

  it('knows white, black and grey in Lab', async () => {
    const { colours } = await ask('engine.lab', { colours: ['#ffffff', '#000000', '#808080'] })
    expect(colours[0]?.l).toBeCloseTo(100, 3)
    expect(colours[1]).toEqual({ l: 0, a: 0, b: 0 })
    expect(colours[2]?.l).toBeCloseTo(53.585, 2)
  })
})

const VECTORS = new URL('../../../fixtures/vectors/ciede2000.json', import.meta.url)
type Pair = Readonly<{
  inputs: Readonly<{ lab1: readonly number[]; lab2: readonly number[] }>
  expected: Readonly<{ dE00: number }>
}>
type Lab = Readonly<{ l: number; a: number; b: number }>
const asLab = ([l = 0, a = 0, b = 0]: readonly number[]): Lab => ({ l, a, b })
