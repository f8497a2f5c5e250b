import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type CellRef, type Chart, slotAt } from '../../../../shared-core/chart/chart.ts'
import { drawLine, lineCells } from '../../../../shared-core/chart/edits/draw-line.ts'
import { drawRectangle } from '../../../../shared-core/chart/edits/draw-rectangle.ts'
import { floodFill } from '../../../../shared-core/chart/edits/flood-fill.ts'
import { paintCells } from '../../../../shared-core/chart/edits/paint-cells.ts'
import { replaceSlot } from '../../../../shared-core/chart/edits/replace-slot.ts'
import { neighbourSteps } from '../../../../shared-core/chart/neighbours.ts'
import { anyChart } from '../any-chart.ts'
import { drawn, picture } from '../picture.ts'

const [A, B, C, BLANK] = [0, 1, 2, -1]
const EMPTY: Chart = { stitch: 'brick', rows: [] }

describe('paintCells', () => {
  it('sets beads and leaves the other rows shared', () => {
    const chart = drawn('brick', [' A A', 'A A A', ' A A'])
    const { chart: painted } = paintCells(chart, [{ row: 1, at: 2 }], B)
    expect(picture(painted)).toEqual([' A A', 'A B A', ' A A'])
    expect([painted.rows[0] === chart.rows[0], painted.rows[2] === chart.rows[2]]).toEqual([
      true,
      true,
    ])
  })

  it('takes beads away with slot -1 and grows nothing', () => {
    const chart = drawn('square', ['A A A'])
    const cells = [2, 20].map((at) => ({ row: 0, at }))
    expect(paintCells(chart, cells, BLANK).chart.rows[0]?.cells).toEqual(Uint16Array.of(1, 0, 1))
  })

  it('grows the chart to the right, below, above and to the left, and says how far the rest moved', () => {
    const chart = drawn('brick', ['A'])
    const cells = [
      { row: 0, at: 4 },
      { row: 1, at: 1 },
      { row: -1, at: -1 },
    ]
    const edit = paintCells(chart, cells, B)
    expect(picture(edit.chart)).toEqual(['B', ' A   B', '  B'])
    expect(edit.shift).toEqual({ row: 1, at: 1 })
  })

  it('snaps a position between two beads to the one on its left', () => {
    expect(
      picture(paintCells(drawn('brick', ['A A', ' A']), [{ row: 1, at: 2 }], B).chart),
    ).toEqual(['A A', ' B'])
  })

  it('keeps low peyote columns low when the chart grows to the left', () => {
    const { chart, shift } = paintCells(drawn('peyote', ['A B']), [{ row: 0, at: -2 }], C)
    expect(picture(chart)).toEqual(['  C A B'])
    expect(shift.at).toBe(4)
  })

  it('begins an empty chart in step with its stitch', () => {
    const cells = [0, 1].map((row) => ({ row, at: 0 }))
    expect(picture(paintCells(EMPTY, cells, A).chart)).toEqual([' A', 'A'])
    expect(picture(paintCells({ ...EMPTY, stitch: 'peyote' }, cells, A).chart)).toEqual(['A', 'A'])
  })

  it('leaves out what would pass the limits of a chart', () => {
    const far = [
      { row: 5_000_000, at: 0 },
      { row: 0, at: -5_000_000 },
      { row: 0, at: Number.NaN },
      { row: 0, at: 2 },
    ]
    const { chart } = paintCells(drawn('square', ['A']), far, B)
    expect(picture(chart)).toEqual(['A B'])
  })

  it('still paints inside a chart as wide as a chart can be', () => {
    const long = { start: 0, cells: new Uint16Array(100_000).fill(1) }
    const chart: Chart = { stitch: 'square', rows: [long, { start: 0, cells: Uint16Array.of(1) }] }
    const { chart: painted } = paintCells(chart, [{ row: 1, at: 100 }], B)
    expect(slotAt(painted, { row: 1, at: 100 })).toBe(B)
  })
})

describe('drawLine', () => {
  it('slants by half beads in brick', () => {
    const chart = drawn('brick', ['A A A A', ' A A A', 'A A A A'])
    const steep = { from: { row: 0, at: 0 }, to: { row: 2, at: 2 } }
    expect(picture(drawLine(chart, steep, B).chart)).toEqual(['B A A A', ' B A A', 'A B A A'])
    const flat = { from: { row: 0, at: 0 }, to: { row: 2, at: 6 } }
    expect(picture(drawLine(chart, flat, B).chart)).toEqual(['B B A A', ' A B B', 'A A A B'])
  })

  it('runs along a row of peyote high and low', () => {
    const chart = drawn('peyote', ['A A A A', 'A A A A'])
    const line = { from: { row: 0, at: 0 }, to: { row: 0, at: 6 } }
    expect(picture(drawLine(chart, line, B).chart)).toEqual(['B B B B', 'A A A A'])
  })

  it('starts and ends at its ends and steps from neighbour to neighbour', () => {
    const place = fc.integer({ min: 0, max: 12 })
    fc.assert(
      fc.property(anyChart(), place, place, place, place, (chart, row, column, toRow, toColumn) => {
        // Right-angle weave has joints between its beads, which a line may cross.
        fc.pre(chart.stitch !== 'right-angle-weave')
        const cellOf = (r: number, c: number): CellRef =>
          lineCells(chart, { from: { row: r, at: 2 * c }, to: { row: r, at: 2 * c } })[0] ?? {
            row: 0,
            at: 0,
          }
        const [from, to] = [cellOf(row, column), cellOf(toRow, toColumn)]
        const cells = lineCells(chart, { from, to })
        expect([cells[0], cells.at(-1)]).toEqual([from, to])
        for (let i = 1; i < cells.length; i += 1) {
          const [a, b] = [cells[i - 1] ?? from, cells[i] ?? to]
          const [down, across] = [b.row - a.row, b.at - a.at]
          expect(Math.abs(down)).toBeLessThanOrEqual(1)
          expect(Math.abs(across)).toBeLessThanOrEqual(2)
        }
      }),
    )
  })

  it('ends however far it is asked to go', () => {
    const line = { from: { row: 0, at: 0 }, to: { row: 0, at: 1e12 } }
    expect(lineCells(EMPTY, line).length).toBeLessThanOrEqual(200_001)
  })
})

describe('drawRectangle', () => {
  it('fills every position between its corners', () => {
    const box = { from: { row: 2, at: 6 }, to: { row: 0, at: 2 }, isFilled: true }
    const chart = drawn('brick', ['A A A A A', ' A A A A', 'A A A A A'])
    expect(picture(drawRectangle(chart, box, B).chart)).toEqual([
      'A B B B A',
      ' A B B A',
      'A B B B A',
    ])
  })

  it('draws a frame that leaves the inside alone', () => {
    const box = { from: { row: 0, at: 0 }, to: { row: 2, at: 6 }, isFilled: false }
    const { chart } = drawRectangle(drawn('loom', ['', '  A A', '']), box, B)
    expect(picture(chart)).toEqual(['B B B B', 'B A A B', 'B B B B'])
  })

  it('ends at the limits of a chart', () => {
    const box = { from: { row: 0, at: 0 }, to: { row: 1e9, at: 1e9 }, isFilled: true }
    const { chart } = drawRectangle(EMPTY, box, A)
    const cells = chart.rows.reduce((sum, row) => sum + row.cells.length, 0)
    expect(cells).toBeLessThanOrEqual(4_000_000)
  })
})

describe('floodFill', () => {
  it('spreads through the six neighbours of brick and stops at other slots', () => {
    const chart = drawn('brick', ['A A B A', ' A B B', 'B A A B'])
    expect(picture(floodFill(chart, { row: 0, at: 0 }, C).chart)).toEqual([
      'C C B A',
      ' C B B',
      'B C C B',
    ])
  })

  it('does not slip through the corners of square stitch', () => {
    const chart = drawn('square', ['A B', 'B A'])
    expect(picture(floodFill(chart, { row: 0, at: 0 }, C).chart)).toEqual(['C B', 'B A'])
  })

  it('fills blanks within rows and takes patches away', () => {
    const chart = drawn('square', ['A   A', 'A A A'])
    expect(picture(floodFill(chart, { row: 0, at: 2 }, B).chart)).toEqual(['A B A', 'A A A'])
    expect(picture(floodFill(chart, { row: 1, at: 2 }, BLANK).chart)).toEqual(['', ''])
  })

  it('changes nothing outside the rows or where the slot is there already', () => {
    const chart = drawn('square', ['A'])
    expect(floodFill(chart, { row: 0, at: 6 }, B).chart.rows).toEqual(chart.rows)
    expect(floodFill(chart, { row: 0, at: 0 }, A).inverse.splices).toEqual([])
  })

  it('fills a whole 200 by 200 panel', () => {
    const rows = Array.from({ length: 200 }, (_, row) => ({
      start: row % 2,
      cells: new Uint16Array(200).fill(1),
    }))
    const { chart } = floodFill({ stitch: 'brick', rows }, { row: 100, at: 200 }, B)
    expect(chart.rows.every(({ cells }) => cells.every((cell) => cell === B + 1))).toBe(true)
  })

  it('leaves no neighbour of the filled patch in the old slot', () => {
    fc.assert(
      fc.property(anyChart({ slots: 2 }), fc.nat(8), fc.nat(20), (chart, row, at) => {
        const old = slotAt(chart, { row, at })
        fc.pre(old >= 0)
        const { chart: filled } = floodFill(chart, { row, at }, 7)
        filled.rows.forEach(({ start, cells }, r) => {
          cells.forEach((cell, i) => {
            if (cell !== 8) return
            for (const [down, across] of neighbourSteps(chart.stitch, r, start + 2 * i)) {
              const beside = { row: r + down, at: start + 2 * i + across }
              expect(slotAt(filled, beside)).not.toBe(old)
            }
          })
        })
      }),
      { numRuns: 300 },
    )
  })
})

describe('replaceSlot', () => {
  it('changes every bead of a slot and shares the rows without it', () => {
    const chart = drawn('loom', ['A B', 'B B', 'B A'])
    const { chart: replaced } = replaceSlot(chart, { from: A, to: C })
    expect(picture(replaced)).toEqual(['C B', 'B B', 'B C'])
    expect(replaced.rows[1]).toBe(chart.rows[1])
  })
})
