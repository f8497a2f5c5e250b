import { describe, expect, it } from 'vitest'
import { buildGrid } from '../../../renderer/drawing/bead-grid.ts'
import { changedBeads } from '../../../renderer/drawing/changed-beads.ts'
import { chartScene } from '../../../renderer/drawing/chart-scene.ts'
import { farColours, paintFar } from '../../../renderer/drawing/paint-far.ts'
import { exactly } from '../../../shared-core/units/spread.ts'

const form = {
  id: 'square',
  name: 'Square',
  family: 'cube',
  sizeLabel: '1 mm',
  diameterMm: exactly(1),
  lengthMm: exactly(1),
  holeMm: exactly(0.5),
  beadsPerGram: exactly(100),
  cullRate: exactly(0),
} as const
const palette = [
  { hex: '#112233', finish: 'opaque' },
  { hex: '#aabbcc', finish: 'opaque' },
] as const
const scene = chartScene({
  chart: {
    stitch: 'square',
    rows: [
      { start: 0, cells: Uint16Array.of(1, 2) },
      { start: 0, cells: Uint16Array.of(0, 1) },
    ],
  },
  form,
  palette,
})

function paint(scale: number, side: number): Uint32Array {
  const pixels = new Uint32Array(side * side)
  paintFar(pixels, side, scene, buildGrid(scene), {
    box: { left: 0, top: 0, right: side / scale, bottom: side / scale },
    leftPx: 0,
    topPx: 0,
    scale,
    colours: farColours(scene.palette),
  })
  return pixels
}

/** A colour as the canvas stores it: opaque, then blue, green, red. */
const pixel = (blueGreenRed: number) => (0xff000000 | blueGreenRed) >>> 0

describe('paintFar', () => {
  it('fills each bead with its clean colour, and nothing where there is no bead', () => {
    expect([...paint(2, 4)]).toEqual([
      ...[pixel(0x332211), pixel(0x332211), pixel(0xccbbaa), pixel(0xccbbaa)],
      ...[pixel(0x332211), pixel(0x332211), pixel(0xccbbaa), pixel(0xccbbaa)],
      ...[0, 0, pixel(0x332211), pixel(0x332211)],
      ...[0, 0, pixel(0x332211), pixel(0x332211)],
    ])
  })

  it('gives every bead at least a pixel, however far away', () => {
    expect(paint(0.2, 2).some((one) => one !== 0)).toBe(true)
    for (const scale of [0.05, 0.3, 0.7]) expect(paint(scale, 4)[0]).not.toBe(0)
  })

  it('leaves a darker seam once beads are large enough to tell apart', () => {
    const pixels = paint(4, 8)
    expect(pixels[0]).toBe(pixel(0x332211))
    expect(pixels[3]).not.toBe(pixel(0x332211))
  })
})

describe('changedBeads', () => {
  it('lists the beads a brush has touched', () => {
    expect(changedBeads(Uint16Array.of(0, 1, 2), Uint16Array.of(0, 3, 2), 9)).toEqual([1])
  })

  it('gives up beyond what is worth painting one by one', () => {
    expect(changedBeads(Uint16Array.of(0, 0), Uint16Array.of(1, 1), 1)).toBeUndefined()
    expect(changedBeads(Uint16Array.of(0), Uint16Array.of(0, 0), 9)).toBeUndefined()
  })
})
