import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { STITCH_KINDS } from '../../../../shared-core/chart/chart.ts'
import { chartSize } from '../../../../shared-core/chart/chart-size.ts'
import { countBeads } from '../../../../shared-core/chart/count-slots.ts'
import { normaliseChart } from '../../../../shared-core/chart/normalise-chart.ts'
import { type BlankOrder, blankChart } from '../../../../shared-core/chart/outlines/blank-chart.ts'
import { sizeInBeads } from '../../../../shared-core/chart/outlines/size-in-beads.ts'
import { misplacedRows } from '../../../../shared-core/chart/row-phase.ts'
import { CYLINDER } from '../forms.ts'
import { picture } from '../picture.ts'

const made = (order: BlankOrder) => {
  const outcome = blankChart(order)
  if (!outcome.ok) throw new Error(outcome.error.message)
  return outcome.value
}

const size = fc.record({
  columns: fc.integer({ min: 1, max: 40 }),
  rows: fc.integer({ min: 1, max: 40 }),
})

describe('blankChart', () => {
  it('leans half a bead out and in by turns in brick', () => {
    expect(picture(made({ stitch: 'brick', columns: 3, rows: 3 }))).toEqual([
      'A A A',
      ' A A A',
      'A A A',
    ])
  })

  it('steps half a bead to the right at every brick row', () => {
    const chart = made({ stitch: 'brick', columns: 2, rows: 3, edge: 'stepped' })
    expect(picture(chart)).toEqual(['A A', ' A A', '  A A'])
  })

  it('rings units of right-angle weave with lying beads above and below', () => {
    const { rows } = made({ stitch: 'right-angle-weave', columns: 2, rows: 1 })
    expect(rows.map(({ start, cells }) => [start, cells.length])).toEqual([
      [1, 2],
      [0, 3],
      [1, 2],
    ])
  })

  it('fills every place of every stitch, in step, cut already', () => {
    fc.assert(
      fc.property(
        size,
        fc.constantFrom(...STITCH_KINDS),
        fc.constantFrom('straight' as const, 'stepped' as const),
        ({ columns, rows }, stitch, edge) => {
          const chart = made({ stitch, columns, rows, edge })
          const beads =
            stitch === 'right-angle-weave'
              ? (rows + 1) * columns + rows * (columns + 1)
              : columns * rows
          expect(countBeads(chart)).toBe(beads)
          expect(misplacedRows(chart)).toEqual([])
          expect(normaliseChart(chart).chart).toEqual(chart)
        },
      ),
    )
  })

  it.each([
    [{ columns: 0, rows: 4 }],
    [{ columns: 4, rows: 1.5 }],
    [{ columns: 100_000, rows: 2 }],
    [{ columns: 3_000, rows: 3_000 }],
  ])('refuses a size of %o', (wrong) => {
    expect(blankChart({ stitch: 'square', ...wrong })).toMatchObject({
      ok: false,
      error: { code: 'blank-size' },
    })
  })
})

describe('sizeInBeads', () => {
  const bead = { diameterMm: 1.6, lengthMm: 1.3, threadMm: 0.11 }
  const mm = (value: number) => ({ kind: 'mm', mm: value }) as const

  it('keeps what is counted in beads', () => {
    const wanted = {
      across: { kind: 'beads', count: 7 },
      down: { kind: 'beads', count: 9 },
    } as const
    expect(sizeInBeads('brick', wanted, bead)).toEqual({ columns: 7, rows: 9 })
  })

  it('comes within a bead of a size in mm in every stitch', () => {
    const ladders = STITCH_KINDS.filter((stitch) => stitch !== 'ladder')
    fc.assert(
      fc.property(
        fc.constantFrom(...ladders),
        fc.double({ min: 8, max: 90, noNaN: true }),
        fc.double({ min: 8, max: 90, noNaN: true }),
        (stitch, widthMm, heightMm) => {
          const beads = sizeInBeads(stitch, { across: mm(widthMm), down: mm(heightMm) }, bead)
          const chart = made({ stitch, ...beads })
          const { widthMm: width, heightMm: height } = chartSize(chart, CYLINDER, {
            threadMm: bead.threadMm,
          })
          // A unit of right-angle weave is 2.9 mm; herringbone goes by pairs; brick leans by half a bead.
          const reach =
            stitch === 'right-angle-weave' ? 1.46 : stitch === 'herringbone' ? 2.41 : 1.61
          expect(Math.abs(width.value - widthMm)).toBeLessThanOrEqual(reach)
          expect(Math.abs(height.value - heightMm)).toBeLessThanOrEqual(
            stitch === 'right-angle-weave' ? 1.46 : 0.81,
          )
        },
      ),
    )
  })

  it('makes pairs of herringbone columns whole', () => {
    const wanted = { across: { kind: 'beads', count: 5 }, down: mm(10) } as const
    expect(sizeInBeads('herringbone', wanted, bead).columns).toBe(6)
  })
})
