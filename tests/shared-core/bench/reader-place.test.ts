import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  goBack,
  goOn,
  lineAfter,
  lineOf,
  placeOf,
  type ReaderStride,
  stepOf,
  unitsDone,
} from '../../../shared-core/bench/reader-place.ts'
import { designOf, panelOf, strandOf } from '../design/a-design.ts'
import { drawChart } from '../stitches/draw-chart.ts'
import { mapOf } from './written.ts'

const diamond = drawChart('brick', ['..A-A-', '.A-B-A-', 'A-B-B-A-', '.A-B-A-', '..A-A-'])
const loop = strandOf('6A', { shape: 'loop', anchor: { panelId: 'panel', row: 0, bead: 0 } })
const pair = designOf([panelOf(diamond, { copies: 2, mirrored: true }), loop])
const map = mapOf(pair, 3)

const steps = fc.integer({ min: 0, max: map.steps })
const strides = fc.constantFrom<ReaderStride>('row', 'step')
const lineStarts = steps.map((at) =>
  at >= map.steps ? at : at - (at % map.stepsInUnit) + (lineOf(map, at)?.from ?? 0),
)

describe('moving through a make', () => {
  it('goes through every step of every copy of every unit, once, to the end', () => {
    let at = 0
    let moves = 0
    while (at < map.steps) {
      at = goOn(map, at, 'step')
      moves += 1
    }
    expect(moves).toBe(3 * map.stepsInUnit)
    expect(goOn(map, at, 'step')).toBe(map.steps)
  })

  it('goes through every line of every unit by rows', () => {
    let at = 0
    let moves = 0
    while (at < map.steps) {
      at = goOn(map, at, 'row')
      moves += 1
    }
    expect(moves).toBe(3 * map.lines.length)
  })

  it('comes back by the same way, step by step', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: map.steps - 1 }), (at) => {
        expect(goBack(map, goOn(map, at, 'step'), 'step')).toBe(at)
      }),
    )
  })

  it('comes back by the same way, row by row', () => {
    fc.assert(
      fc.property(
        lineStarts.filter((at) => at < map.steps),
        (at) => {
          expect(goBack(map, goOn(map, at, 'row'), 'row')).toBe(at)
        },
      ),
    )
  })

  it('goes back to the beginning of the row first, where it stands in its middle', () => {
    const long = map.lines.find(({ line }) => line.steps.length > 2)
    const from = long?.from ?? 0
    expect(goBack(map, from + 2, 'row')).toBe(from)
  })

  it('never leaves the make', () => {
    fc.assert(
      fc.property(steps, strides, (at, stride) => {
        for (const to of [goOn(map, at, stride), goBack(map, at, stride)]) {
          expect(to).toBeGreaterThanOrEqual(0)
          expect(to).toBeLessThanOrEqual(map.steps)
        }
      }),
    )
  })

  it('shows next what it goes to', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: map.steps - 1 }), (at) => {
        const next = goOn(map, at, 'row')
        expect(lineAfter(map, at)).toBe(next === map.steps ? undefined : lineOf(map, next))
      }),
    )
  })
})

describe('a place', () => {
  it('is kept and found again, for every step', () => {
    fc.assert(
      fc.property(steps, (at) => {
        expect(stepOf(map, placeOf(map, at))).toBe(at)
      }),
    )
  })

  it('counts copies over units, parts in a piece, steps in a part', () => {
    expect(placeOf(map, 0)).toEqual({ copy: 0, part: 0, step: 0 })
    expect(placeOf(map, map.stepsInUnit)).toEqual({ copy: 2, part: 0, step: 0 })
    expect(placeOf(map, map.steps)).toEqual({ copy: 6, part: 0, step: 0 })
  })

  it('that the design no longer has is taken to one that it has', () => {
    const any = fc.record({
      copy: fc.integer({ min: -1, max: 9 }),
      part: fc.integer({ min: -1, max: 9 }),
      step: fc.integer({ min: -5, max: 999 }),
    })
    fc.assert(
      fc.property(any, (place) => {
        const at = stepOf(map, place)
        expect(at).toBeGreaterThanOrEqual(0)
        expect(at).toBeLessThanOrEqual(map.steps)
      }),
    )
  })

  it('tells how many whole units are made', () => {
    fc.assert(
      fc.property(steps, (at) => {
        expect(unitsDone(map, at)).toBe(Math.floor(placeOf(map, at).copy / map.piecesInUnit))
      }),
    )
  })
})

it('a design without beads has nothing to go through', () => {
  const empty = mapOf(designOf([]), 2)
  expect(empty.steps).toBe(0)
  expect(lineOf(empty, 0)).toBeUndefined()
  expect(stepOf(empty, { copy: 0, part: 0, step: 0 })).toBe(0)
})
