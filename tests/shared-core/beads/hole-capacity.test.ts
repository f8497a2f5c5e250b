import { readFileSync } from 'node:fs'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { circlesThatFit, HOLE_TO_STRAND } from '../../../shared-core/beads/circle-packing.ts'
import { fillOf, holeCapacity } from '../../../shared-core/beads/hole-capacity.ts'
import { estimated, exactly } from '../../../shared-core/units/spread.ts'

type TableVector = { id: string; expected: { table: { n: number; R_over_r: number }[] } }
type FitVector = { id: string; inputs: { h: number; t: number }; expected: { n: number } }
const vectors = JSON.parse(
  readFileSync(new URL('../../fixtures/vectors/circles_in_circle.json', import.meta.url), 'utf8'),
) as (TableVector | FitVector)[]
const table = vectors.filter((vector): vector is TableVector => 'table' in vector.expected)
const fits = vectors.filter((vector): vector is FitVector => 'n' in vector.expected)

const use = (hole: number, needle: number, thread: number, doubled = false) => ({
  holeMm: exactly(hole),
  needleMm: exactly(needle),
  threadMm: exactly(thread),
  doubled,
})

describe('circlesThatFit', () => {
  it('holds the published ratios for 1 to 20', () => {
    expect(table.flatMap((vector) => vector.expected.table.map((row) => row.R_over_r))).toEqual(
      HOLE_TO_STRAND,
    )
  })

  it.each(fits)(
    '$id is the published count (the published table ends at 20)',
    ({ inputs, expected }) => {
      const count = circlesThatFit(inputs.h, inputs.t)
      expect(Math.min(20, count.atLeast)).toBe(expected.n)
      expect(count.atMost).toBeGreaterThanOrEqual(count.atLeast)
    },
  )

  // Best known packings: 37 circles at ratio 6.7588, 61 at 8.6613.
  it.each([
    [6.7588, 37],
    [8.6613, 61],
  ])('brackets the best known packing at ratio %f', (ratio, known) => {
    const { atLeast, atMost } = circlesThatFit(ratio, 1)
    expect(atLeast).toBeLessThanOrEqual(known)
    expect(atMost).toBeGreaterThanOrEqual(known)
    expect(atLeast).toBeGreaterThan(known * 0.8)
  })

  it('never fits fewer in a wider hole, nor more area than the hole has', () => {
    const ratio = fc.double({ min: 0.5, max: 40, noNaN: true })
    fc.assert(
      fc.property(ratio, ratio, (a, b) => {
        const narrow = circlesThatFit(Math.min(a, b), 1)
        const wide = circlesThatFit(Math.max(a, b), 1)
        expect(wide.atLeast).toBeGreaterThanOrEqual(Math.min(20, narrow.atLeast))
        expect(narrow.atLeast).toBeLessThanOrEqual(wide.atMost)
        expect(wide.atLeast).toBeLessThanOrEqual(Math.max(a, b) ** 2)
      }),
    )
  })

  it('refuses a strand without thickness', () => {
    expect(() => circlesThatFit(1, 0)).toThrow(RangeError)
    expect(() => circlesThatFit(-1, 1)).toThrow(RangeError)
  })
})

describe('holeCapacity', () => {
  it.each([
    { what: 'nylon D in a tight 11/0', hole: 0.7, needle: 0.45, thread: 0.23, passes: 3 },
    { what: '6 lb braid in an 11/0 cylinder', hole: 0.8, needle: 0.36, thread: 0.17, passes: 10 },
    { what: '6 lb braid in a Czech 11/0', hole: 0.65, needle: 0.36, thread: 0.17, passes: 6 },
    { what: '4 lb braid in a 15/0', hole: 0.65, needle: 0.36, thread: 0.13, passes: 10 },
  ])('gives $passes passes for $what', ({ hole, needle, thread, passes }) => {
    expect(holeCapacity(use(hole, needle, thread)).value).toBe(passes)
  })

  it('lets no needle through a hole of its own width', () => {
    expect(holeCapacity(use(0.45, 0.45, 0.1)).value).toBe(0)
  })

  it('takes the range from the narrowest and the widest case', () => {
    const capacity = holeCapacity({
      holeMm: estimated(0.75, 0.8, 0.85),
      threadMm: estimated(0.15, 0.17, 0.2),
      needleMm: estimated(0.35, 0.36, 0.38),
      doubled: false,
    })
    expect(capacity).toMatchObject({ value: 10, basis: 'estimated' })
    expect(capacity.low).toBe(holeCapacity(use(0.75, 0.38, 0.2)).value)
    expect(capacity.high).toBe(holeCapacity(use(0.85, 0.35, 0.15)).high)
  })

  const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true })

  it('never grows with a thicker thread, a thicker needle or a narrower hole', () => {
    fc.assert(
      fc.property(
        mm(0.4, 1.2),
        mm(0.25, 0.46),
        mm(0.1, 0.4),
        mm(1, 1.5),
        (hole, needle, thread, by) => {
          const passes = holeCapacity(use(hole, needle, thread)).value
          expect(holeCapacity(use(hole, needle, thread * by)).value).toBeLessThanOrEqual(passes)
          expect(holeCapacity(use(hole, needle * by, thread)).value).toBeLessThanOrEqual(passes)
          expect(holeCapacity(use(hole / by, needle, thread)).value).toBeLessThanOrEqual(passes)
        },
      ),
    )
  })

  it('takes at most half the strands, so fewer passes, with a doubled thread', () => {
    fc.assert(
      fc.property(mm(0.4, 1.2), mm(0.25, 0.39), mm(0.1, 0.4), (hole, needle, thread) => {
        const single = holeCapacity(use(hole, needle, thread)).value
        const doubled = holeCapacity(use(hole, needle, thread, true)).value
        expect(doubled).toBeLessThanOrEqual(single)
        expect(2 * doubled).toBeLessThanOrEqual(single + 1)
      }),
    )
  })
})

describe('fillOf', () => {
  it.each([
    [0, 'free'],
    [8, 'free'],
    [9, 'tight'],
    [10, 'tight'],
    [11, 'full'],
  ])('of %i passes where 10 fit is %s', (passes, fill) => {
    expect(fillOf(passes, 10)).toBe(fill)
  })

  it('never loosens with another pass', () => {
    const order = { free: 0, tight: 1, full: 2 }
    fc.assert(
      fc.property(fc.nat(40), fc.nat(40), (passes, capacity) => {
        const now = order[fillOf(passes, capacity)]
        expect(order[fillOf(passes + 1, capacity)]).toBeGreaterThanOrEqual(now)
      }),
    )
  })
})
