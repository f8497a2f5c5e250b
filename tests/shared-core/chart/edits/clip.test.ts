import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Chart } from '../../../../shared-core/chart/chart.ts'
import {
  type Clip,
  copyCells,
  moveCells,
  pasteCells,
} from '../../../../shared-core/chart/edits/clip.ts'
import {
  type CellSpan,
  rectangleSpans,
} from '../../../../shared-core/chart/edits/draw-rectangle.ts'
import { anyChart } from '../any-chart.ts'
import { drawn, picture } from '../picture.ts'
import { placedBeads } from '../placed.ts'

const everything = (chart: Chart): readonly CellSpan[] =>
  rectangleSpans(chart, { from: { row: 0, at: 0 }, to: { row: 20, at: 60 } })

const copied = (chart: Chart): Clip => {
  const clip = copyCells(chart, everything(chart))
  if (clip === undefined) throw new Error('nothing to copy')
  return clip
}

describe('pasteCells', () => {
  it('snaps half a bead in brick, so that the motif keeps its slant', () => {
    const motif = copied(drawn('brick', [' B', 'B B']))
    const ground = drawn('brick', ['A A A A', ' A A A', 'A A A A', ' A A A'])
    expect(picture(pasteCells(ground, motif, { row: 1, at: 4 }).chart)).toEqual([
      'A A A A',
      ' A B A',
      'A B B A',
      ' A A A',
    ])
  })

  it('moves a peyote motif half a row with each column, so that it keeps its shape', () => {
    const motif = copied(drawn('peyote', ['B B', 'B']))
    const ground = drawn('peyote', ['A A A A', 'A A A A', 'A A A A'])
    const { chart } = pasteCells(ground, motif, { row: 0, at: 2 })
    expect(picture(chart)).toEqual(['A B A A', 'A B B A', 'A A A A'])
  })

  it('keeps lying beads lying in right-angle weave', () => {
    const motif = copied(drawn('right-angle-weave', [' B', 'B B']))
    const { chart } = pasteCells(drawn('right-angle-weave', [' A A']), motif, { row: 1, at: 4 })
    expect(picture(chart)).toEqual([' A B', '  B B'])
  })

  it('lets what lies below its blanks be', () => {
    const motif = copied(drawn('square', ['B   B']))
    expect(picture(pasteCells(drawn('square', ['A A A']), motif, { row: 0, at: 0 }).chart)).toEqual(
      ['B A B'],
    )
  })

  it('puts the same piece of work down anywhere', () => {
    fc.assert(
      fc.property(
        anyChart(),
        fc.integer({ min: -6, max: 12 }),
        fc.integer({ min: -9, max: 20 }),
        (chart, row, at) => {
          const clip = copyCells(chart, everything(chart))
          fc.pre(clip !== undefined)
          const { chart: pasted } = pasteCells({ ...chart, rows: [] }, clip as Clip, { row, at })
          expect(placedBeads(pasted)).toEqual(placedBeads(chart))
        },
      ),
      { numRuns: 500 },
    )
  })
})

describe('moveCells', () => {
  it('takes the beads from where they were', () => {
    const chart = drawn('brick', ['A A A', ' A A', 'B B A'])
    const selection = [{ row: 2, from: 0, to: 4 }]
    expect(picture(moveCells(chart, { selection, to: { row: 0, at: 2 } }).chart)).toEqual([
      'A B B',
      ' A A',
      '    A',
    ])
  })

  it('copies nothing from an empty selection', () => {
    const chart = drawn('brick', ['A'])
    expect(copyCells(chart, [{ row: 5, from: 0, to: 9 }])).toBeUndefined()
    expect(moveCells(chart, { selection: [], to: { row: 3, at: 3 } }).chart).toEqual(chart)
  })
})
