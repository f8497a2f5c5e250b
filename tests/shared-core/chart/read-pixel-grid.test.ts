import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { MAX_GRID_COLOURS, readPixelGrid } from '../../../shared-core/chart/read-pixel-grid.ts'
import { misplacedRows } from '../../../shared-core/chart/row-phase.ts'
import type { Picture } from '../../../shared-core/colour/picture/picture.ts'
import { picture } from './picture.ts'

const INK: Readonly<Record<string, readonly number[]>> = {
  '.': [9, 9, 9, 0],
  k: [20, 30, 40, 255],
  r: [200, 30, 30, 255],
  f: [200, 30, 30, 128],
}

function drawn(lines: readonly string[]): Picture {
  const rgba = Uint8Array.from(lines.flatMap((line) => [...line].flatMap((one) => INK[one] ?? [])))
  return { rgba, width: lines[0]?.length ?? 0, height: lines.length }
}

describe('readPixelGrid', () => {
  it('makes each colour a slot, the most used first, and leaves see-through pixels empty', () => {
    const read = readPixelGrid(drawn(['.k.', 'kfk', '.k.']), { stitch: 'square' })
    if (!read.ok) throw new Error(read.error.message)
    const { chart, colours, beads, notes } = read.value
    expect(picture(chart)).toEqual(['  A', 'A B A', '  A'])
    expect(colours).toEqual([
      { hex: '#141e28', name: 'dark blue', count: 4 },
      { hex: '#c81e1e', name: 'red', count: 1 },
    ])
    expect(beads).toBe(5)
    expect(notes).toEqual([
      '3 pixels by 3, read as square stitch: 5 beads in 2 colours.',
      'Rows lie straight under each other.',
      '4 see-through pixels left without a bead.',
    ])
  })

  it('sets every second brick row half a bead to the right', () => {
    const read = readPixelGrid(drawn(['kk', 'kk', 'kk']), { stitch: 'brick' })
    expect(read.ok && picture(read.value.chart)).toEqual(['A A', ' A A', 'A A'])
  })

  it('keeps every seen pixel as one bead, in step, in any stitch', () => {
    const stitches = [
      'brick',
      'peyote',
      'square',
      'loom',
      'herringbone',
      'right-angle-weave',
    ] as const
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.array(fc.constantFrom('.', 'k', 'r'), { minLength: 1, maxLength: 80 }),
        fc.constantFrom(...stitches),
        (width, pixels, stitch) => {
          const height = Math.max(1, Math.floor(pixels.length / width))
          const lines = Array.from({ length: height }, (_, row) =>
            Array.from({ length: width }, (_, x) => pixels[(row * width + x) % pixels.length]).join(
              '',
            ),
          )
          const seen = lines.join('').replaceAll('.', '').length
          const read = readPixelGrid(drawn(lines), { stitch })
          expect(read.ok).toBe(seen > 0)
          if (seen === 0) return
          if (!read.ok) throw new Error(read.error.message)
          expect(read.value.beads).toBe(seen)
          expect(read.value.colours.reduce((sum, { count }) => sum + count, 0)).toBe(seen)
          expect(misplacedRows(read.value.chart)).toEqual([])
        },
      ),
    )
  })

  it('refuses a photograph and says where it belongs', () => {
    const width = MAX_GRID_COLOURS + 1
    const rgba = Uint8Array.from({ length: 4 * width }, (_, i) => (i % 4 === 0 ? i / 4 : 255))
    expect(readPixelGrid({ rgba, width, height: 1 }, { stitch: 'loom' })).toMatchObject({
      ok: false,
      error: { code: 'grid-many-colours', next: expect.stringContaining('picture') },
    })
  })

  it('refuses nothing at all, and more than a chart can hold', () => {
    expect(readPixelGrid(drawn(['..']), { stitch: 'loom' })).toMatchObject({
      ok: false,
      error: { code: 'grid-empty' },
    })
    const huge = { rgba: new Uint8Array(0), width: 100_000, height: 2 }
    expect(readPixelGrid(huge, { stitch: 'loom' })).toMatchObject({
      ok: false,
      error: { code: 'grid-large' },
    })
  })
})
