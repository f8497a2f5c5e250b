import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { compareCharts } from '../../../shared-core/chart/compare-charts.ts'
import { countBeads } from '../../../shared-core/chart/count-slots.ts'
import { deleteRows } from '../../../shared-core/chart/edits/delete-rows.ts'
import { insertRows } from '../../../shared-core/chart/edits/insert-rows.ts'
import { paintCells } from '../../../shared-core/chart/edits/paint-cells.ts'
import { normaliseChart } from '../../../shared-core/chart/normalise-chart.ts'
import { anyChart } from './any-chart.ts'
import { drawn } from './picture.ts'

const [A, B, C] = [0, 1, 2]

/** A panel whose rows all differ. */
const PANEL = drawn('brick', ['A A A', ' B A', 'C A B', ' C C', 'A B C'])

const NOTHING = { isSame: true, stitch: undefined, rowsAdded: [], rowsRemoved: [], rowsMoved: [] }

describe('compareCharts', () => {
  it('names a painted cell with its slot before and after', () => {
    const { chart } = paintCells(PANEL, [{ row: 2, at: 2 }], C)
    const { cells, counts, rowsAdded, isSame } = compareCharts(PANEL, chart)
    expect([cells.count, ...cells.row, ...cells.at, ...cells.from, ...cells.to]).toEqual([
      1,
      2,
      2,
      A,
      C,
    ])
    expect(counts).toEqual([
      { slot: A, from: 6, to: 5 },
      { slot: C, from: 4, to: 5 },
    ])
    expect([rowsAdded, isSame]).toEqual([[], false])
  })

  it('names beads added and taken at the ends of rows', () => {
    const earlier = drawn('square', ['A A', 'B B', 'C'])
    const { cells, rowsMoved } = compareCharts(earlier, drawn('square', ['  A A', 'B', 'C B']))
    const told = Array.from(cells.row, (row, i) => [row, cells.at[i], cells.from[i], cells.to[i]])
    expect(told).toEqual([
      [1, 2, B, -1],
      [2, 2, -1, B],
    ])
    expect(rowsMoved).toEqual([])
  })

  it('names inserted rows, not the rows below them', () => {
    const { chart } = insertRows(PANEL, { before: 2, count: 2, slot: B })
    expect(compareCharts(PANEL, chart)).toMatchObject({
      rowsAdded: [2, 3],
      rowsRemoved: [],
      rowsMoved: [],
      cells: { count: 0 },
    })
  })

  it('names the first brick row that moved half a bead after one row was put in', () => {
    const { chart } = insertRows(PANEL, { before: 2, count: 1, slot: B })
    expect(compareCharts(PANEL, chart)).toMatchObject({ rowsAdded: [2], rowsMoved: [3] })
  })

  it('names removed rows and changes elsewhere together', () => {
    const { chart: shorter } = deleteRows(PANEL, { from: 1, count: 2 })
    const { chart } = paintCells(shorter, [{ row: 2, at: 4 }], A)
    expect(compareCharts(PANEL, chart)).toMatchObject({
      rowsRemoved: [1, 2],
      rowsAdded: [],
      cells: { count: 1 },
    })
  })

  it('names a change of stitch', () => {
    const { stitch, isSame } = compareCharts(drawn('square', ['A']), drawn('loom', ['A']))
    expect([stitch, isSame]).toEqual([{ from: 'square', to: 'loom' }, false])
  })

  it('finds no difference in a chart and itself, nor in one that moved as a whole', () => {
    fc.assert(
      fc.property(anyChart(), (chart) => {
        expect(compareCharts(chart, chart)).toMatchObject({ ...NOTHING, counts: [] })
        const { chart: plain } = normaliseChart(chart)
        const { rowsMoved, cells, counts } = compareCharts(chart, plain)
        expect([rowsMoved, cells.count, counts]).toEqual([[], 0, []])
      }),
    )
  })

  it('accounts for every bead: what was, less what went, plus what came', () => {
    fc.assert(
      fc.property(anyChart(), anyChart(), (before, after) => {
        const { cells, counts, rowsAdded, rowsRemoved } = compareCharts(before, after)
        const beadsIn = (chart: typeof before, rows: readonly number[]): number =>
          countBeads({ ...chart, rows: rows.flatMap((row) => chart.rows[row] ?? []) })
        const came = cells.from.filter((slot) => slot < 0).length + beadsIn(after, rowsAdded)
        const went = cells.to.filter((slot) => slot < 0).length + beadsIn(before, rowsRemoved)
        expect(countBeads(before) - went + came).toBe(countBeads(after))
        const more = counts.reduce((sum, { from, to }) => sum + to - from, 0)
        expect(more).toBe(countBeads(after) - countBeads(before))
      }),
      { numRuns: 1000 },
    )
  })

  it('compares charts of 5,000 rows by their order where the best matching would take too long', () => {
    const tall = (slot: number) => ({
      stitch: 'square' as const,
      rows: Array.from({ length: 5000 }, (_, row) => ({
        start: 0,
        cells: Uint16Array.of(1 + ((row * slot) % 97), slot),
      })),
    })
    expect(compareCharts(tall(5), tall(7)).rowsAdded).toEqual([])
  })
})
