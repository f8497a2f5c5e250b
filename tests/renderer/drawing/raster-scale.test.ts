import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { TILE_PX } from '../../../renderer/drawing/tile.ts'
import { rasterScale } from '../../../renderer/drawing/tile-store.ts'

const scene = (widthMm: number, heightMm: number) => ({
  xMm: new Float32Array(0),
  yMm: new Float32Array(0),
  slotOf: new Uint16Array(0),
  palette: [],
  widthMm,
  heightMm,
  beadWidthMm: 1.6,
  beadHeightMm: 1.3,
  axis: 'vertical' as const,
})

describe('rasterScale', () => {
  it('keeps beads of a work seen from afar at a pixel and a half', () => {
    expect(rasterScale(0.1, scene(800, 650))).toBeCloseTo(1.5 / 1.3, 9)
    expect(rasterScale(12, scene(800, 650))).toBe(12)
  })

  it('never asks for more tiles than are kept when a work is seen whole', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 200_000, noNaN: true }),
        fc.double({ min: 1, max: 200_000, noNaN: true }),
        (widthMm, heightMm) => {
          const scale = rasterScale(1e-6, scene(widthMm, heightMm))
          const tiles = (mm: number) => Math.ceil((mm * scale) / TILE_PX)
          expect(tiles(widthMm) * tiles(heightMm)).toBeLessThanOrEqual(64)
        },
      ),
    )
  })
})
