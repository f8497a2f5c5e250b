import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  FRINGE_GRADES,
  type FringeOrder,
  fringeFan,
  fringeLengths,
} from '../../../../shared-core/chart/outlines/fringe-fan.ts'
import { readStrandBeads } from '../../../../shared-core/stitches/strand/strand-beads.ts'

const anyFringe = fc
  .record({
    places: fc.integer({ min: 1, max: 60 }),
    shortest: fc.integer({ min: 1, max: 40 }),
    more: fc.integer({ min: 0, max: 60 }),
    grade: fc.constantFrom(...FRINGE_GRADES),
    tip: fc.integer({ min: 0, max: 6 }),
  })
  .map(
    ({ more, ...order }): FringeOrder => ({ ...order, longest: order.shortest + more, tipSlot: 1 }),
  )

describe('fringeLengths', () => {
  const order = { places: 5, shortest: 4, longest: 10, tip: 1 }

  it.each([
    ['point', [4, 7, 10, 7, 4]],
    ['hollow', [10, 7, 4, 7, 10]],
    ['slant', [4, 6, 7, 9, 10]],
    ['even', [10, 10, 10, 10, 10]],
  ] as const)('runs %s', (grade, lengths) => {
    expect(fringeLengths({ ...order, grade })).toEqual(lengths)
  })

  it('stays in its range, reaches the longest, and is alike on both sides unless it slants', () => {
    fc.assert(
      fc.property(anyFringe, (fringe) => {
        const lengths = fringeLengths(fringe)
        expect(lengths).toHaveLength(fringe.places)
        expect(Math.min(...lengths)).toBeGreaterThanOrEqual(fringe.shortest)
        expect(Math.max(...lengths)).toBeLessThanOrEqual(fringe.longest)
        if (fringe.grade !== 'hollow' || fringe.places > 2) {
          expect(Math.max(...lengths)).toBe(fringe.longest)
        }
        if (fringe.grade !== 'slant') expect(lengths.toReversed()).toEqual(lengths)
        else expect(lengths.toSorted((a, b) => a - b)).toEqual(lengths)
      }),
    )
  })
})

describe('fringeFan', () => {
  it('joins neighbours of one length and ends each strand in its tip', () => {
    const fan = fringeFan({
      places: 4,
      shortest: 3,
      longest: 6,
      grade: 'point',
      tip: 2,
      slot: 0,
      tipSlot: 1,
    })
    expect(fan).toEqual({
      ok: true,
      value: [
        { bead: 0, copies: 1, beads: '1A 2B' },
        { bead: 1, copies: 2, beads: '4A 2B' },
        { bead: 3, copies: 1, beads: '1A 2B' },
      ],
    })
  })

  it('hangs one strand from every bead of the row, as long as its length says', () => {
    fc.assert(
      fc.property(anyFringe, (fringe) => {
        const fan = fringeFan(fringe)
        if (!fan.ok) throw new Error(fan.error.message)
        const hung = fan.value.flatMap(({ bead, copies, beads }) =>
          Array.from({ length: copies }, (_, copy) => [
            bead + copy,
            readStrandBeads(beads)?.length,
          ]),
        )
        expect(hung).toEqual(fringeLengths(fringe).map((length, place) => [place, length]))
      }),
    )
  })

  it.each([
    [{ places: 0 }],
    [{ shortest: 9, longest: 8 }],
    [{ longest: 2_000 }],
    [{ tip: -1 }],
    [{ places: 2.5 }],
  ])('refuses %o', (wrong) => {
    const good = { places: 5, shortest: 2, longest: 8, grade: 'even', tip: 1 } as const
    expect(fringeFan({ ...good, ...wrong })).toMatchObject({
      ok: false,
      error: { code: 'fringe-size' },
    })
  })
})
