import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { countBeads } from '../../../../shared-core/chart/count-slots.ts'
import { deleteColumns } from '../../../../shared-core/chart/edits/delete-columns.ts'
import { deleteRows } from '../../../../shared-core/chart/edits/delete-rows.ts'
import { insertColumns } from '../../../../shared-core/chart/edits/insert-columns.ts'
import { insertRows } from '../../../../shared-core/chart/edits/insert-rows.ts'
import { growRow, shrinkRow } from '../../../../shared-core/chart/edits/row-ends.ts'
import { shiftRows } from '../../../../shared-core/chart/edits/shift-rows.ts'
import { normaliseChart } from '../../../../shared-core/chart/normalise-chart.ts'
import { anyChart } from '../any-chart.ts'
import { drawn, picture } from '../picture.ts'
import { placedBeads } from '../placed.ts'

const [B, BLANK] = [1, -1]

describe('insertRows', () => {
  it('keeps a straight brick edge straight and moves what follows half a bead', () => {
    const chart = drawn('brick', ['A A', ' A A', 'A A'])
    const { chart: edited } = insertRows(chart, { before: 2, count: 1, slot: B })
    expect(picture(edited)).toEqual(['A A', ' A A', 'B B', ' A A'])
  })

  it('leaves the rows below where they are after two brick rows', () => {
    const chart = drawn('brick', ['A A', ' A A'])
    const { chart: edited } = insertRows(chart, { before: 1, count: 2, slot: B })
    expect(picture(edited)).toEqual(['A A', ' B B', 'B B', ' A A'])
    expect(edited.rows[3]).toBe(chart.rows[1])
  })

  it('inserts above the first row and after the last', () => {
    const chart = drawn('square', ['A A'])
    const above = insertRows(chart, { before: 0, count: 1, slot: B })
    expect([picture(above.chart), above.shift]).toEqual([['B B', 'A A'], { row: 1, at: 0 }])
    expect(picture(insertRows(chart, { before: 9, count: 1, slot: B }).chart)).toEqual([
      'A A',
      'B B',
    ])
  })

  it('inserts right-angle weave rows in twos, each as wide as its kind', () => {
    const chart = drawn('right-angle-weave', [' A', 'A A', ' A'])
    const { chart: edited } = insertRows(chart, { before: 3, count: 1, slot: B })
    expect(picture(edited)).toEqual([' A', 'A A', ' A', 'B B', ' B'])
  })

  it('inserts blank rows as wide as the row above', () => {
    const { chart } = insertRows(drawn('square', ['A A']), { before: 1, count: 1, slot: BLANK })
    expect(chart.rows[1]?.cells).toEqual(Uint16Array.of(0, 0))
  })
})

describe('deleteRows', () => {
  it('moves the brick rows below half a bead towards the row they now follow', () => {
    const chart = drawn('brick', ['A A', ' B B', 'C C'])
    expect(picture(deleteRows(chart, { from: 1, count: 1 }).chart)).toEqual([' A A', 'C C'])
  })

  it('deletes from the top without moving anything sideways', () => {
    const { chart, shift } = deleteRows(drawn('brick', ['A A', ' B B']), { from: 0, count: 1 })
    expect([picture(chart), shift]).toEqual([[' B B'], { row: -1, at: 0 }])
  })
})

describe('insertColumns', () => {
  it('widens the rows that cross the place and moves those to its right', () => {
    const chart = drawn('square', ['A A A', '        A', 'A'])
    expect(picture(insertColumns(chart, { before: 2, count: 1, slot: B }).chart)).toEqual([
      'A B A A',
      '          A',
      'A',
    ])
  })
})

describe('deleteColumns', () => {
  it('closes up what lies to the right', () => {
    const chart = drawn('brick', ['A B C D', ' A B C', '    C D'])
    expect(picture(deleteColumns(chart, { from: 2, count: 1 }).chart)).toEqual([
      'A C D',
      ' A C',
      '  C D',
    ])
  })

  it('takes back what insertColumns put in', () => {
    fc.assert(
      fc.property(anyChart(), fc.nat(24), fc.integer({ min: 1, max: 3 }), (chart, place, count) => {
        const wider = insertColumns(chart, { before: place, count, slot: B }).chart
        const back = deleteColumns(wider, { from: place, count }).chart
        expect(picture(back)).toEqual(picture(chart))
      }),
    )
  })
})

describe('growRow and shrinkRow', () => {
  it('add and take beads at the end of a row', () => {
    const chart = drawn('brick', ['A A', ' A'])
    const grown = growRow(chart, { row: 1, side: 'left', count: 1, slot: B })
    expect(picture(grown.chart)).toEqual([' A A', 'B A'])
    const right = growRow(chart, { row: 1, side: 'right', count: 2, slot: B })
    expect(picture(right.chart)).toEqual(['A A', ' A B B'])
    expect(picture(shrinkRow(chart, { row: 0, side: 'left', count: 1 }).chart)).toEqual([
      '  A',
      ' A',
    ])
  })

  it('take back each other', () => {
    fc.assert(
      fc.property(
        anyChart(),
        fc.record({
          row: fc.nat(8),
          side: fc.constantFrom('left' as const, 'right' as const),
          count: fc.integer({ min: 1, max: 4 }),
        }),
        (chart, end) => {
          const grown = growRow(chart, { ...end, slot: B }).chart
          const back = shrinkRow(grown, end).chart
          const hadBeads = chart.rows[end.row]?.cells.some((cell) => cell !== 0) ?? false
          expect(countBeads(grown)).toBe(countBeads(chart) + (hadBeads ? end.count : 0))
          if (hadBeads) expect(placedBeads(back)).toEqual(placedBeads(chart))
        },
      ),
    )
  })
})

describe('shiftRows', () => {
  it('moves rows by whole beads and lifts the chart where it would begin left of nothing', () => {
    const chart = drawn('brick', ['A', ' B', 'C'])
    const moved = shiftRows(chart, { from: 1, to: 1, halfBeads: -3 })
    expect([picture(moved.chart), moved.shift]).toEqual([[' A', 'B', ' C'], { row: 0, at: 1 }])
  })

  it('changes nothing past the limits of a chart', () => {
    const chart = drawn('loom', ['A'])
    expect(shiftRows(chart, { from: 0, to: 0, halfBeads: 1e9 }).chart).toEqual(chart)
  })
})

describe('normaliseChart', () => {
  it('cuts blank edges and moves the chart to the left', () => {
    const chart = drawn('brick', ['', '    A', '   A A', ''])
    expect(picture(normaliseChart(chart).chart)).toEqual([' A', 'A A'])
  })

  it('keeps every bead where it is beside the others', () => {
    fc.assert(
      fc.property(anyChart(), (chart) => {
        const { chart: plain } = normaliseChart(chart)
        expect(placedBeads(plain)).toEqual(placedBeads(chart))
        expect(normaliseChart(plain).chart).toEqual(plain)
      }),
    )
  })
})
