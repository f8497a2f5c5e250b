import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Chart } from '../../../../shared-core/chart/chart.ts'
import { applyPatch, type ChartPatch } from '../../../../shared-core/chart/edits/chart-edit.ts'
import { fromPatchJson, toPatchJson } from '../../../../shared-core/chart/edits/patch-json.ts'
import { misplacedRows } from '../../../../shared-core/chart/row-phase.ts'
import { anyChart } from '../any-chart.ts'
import { anyEdit } from './any-edit.ts'

const edits = fc.array(anyEdit, { minLength: 1, maxLength: 6 })

describe('every edit', () => {
  it('is taken back by its inverse, however many follow each other', () => {
    fc.assert(
      fc.property(anyChart(), edits, (chart, steps) => {
        const inverses: ChartPatch[] = []
        let edited: Chart = chart
        for (const { edit } of steps) {
          const done = edit(edited)
          inverses.push(done.inverse)
          edited = done.chart
        }
        const undone = inverses
          .toReversed()
          .reduce((now, inverse) => applyPatch(now, inverse).chart, edited)
        expect(undone).toEqual(chart)
      }),
      { numRuns: 1000 },
    )
  })

  it('is done again by the inverse of its inverse', () => {
    fc.assert(
      fc.property(anyChart(), anyEdit, (chart, { edit }) => {
        const done = edit(chart)
        const undone = applyPatch(done.chart, done.inverse)
        const redone = applyPatch(undone.chart, undone.inverse)
        expect(redone.chart).toEqual(done.chart)
        expect(redone.shift).toEqual(done.shift)
      }),
      { numRuns: 1000 },
    )
  })

  it('keeps its inverse through storing', () => {
    fc.assert(
      fc.property(anyChart(), anyEdit, (chart, { edit }) => {
        const { inverse } = edit(chart)
        const stored = JSON.stringify(toPatchJson(inverse))
        expect(fromPatchJson(JSON.parse(stored))).toEqual(inverse)
      }),
    )
  })

  it('never changes the chart it was given', () => {
    fc.assert(
      fc.property(anyChart(), anyEdit, (chart, { edit }) => {
        const before = structuredClone(chart)
        edit(chart)
        expect(chart).toEqual(before)
      }),
    )
  })

  it('leaves every row in step with the stitch and begun at 0 or more', () => {
    fc.assert(
      fc.property(anyChart(), edits, (chart, steps) => {
        const edited = steps.reduce((now, { edit }) => edit(now).chart, chart)
        expect(misplacedRows(edited)).toEqual([])
        expect(edited.rows.filter(({ start }) => !(start >= 0))).toEqual([])
      }),
      { numRuns: 1000 },
    )
  })

  it('ends without an exception on charts of no rows, one long row and one long column', () => {
    const long: Chart = {
      stitch: 'brick',
      rows: [{ start: 0, cells: new Uint16Array(100_000).fill(1) }],
    }
    const tall: Chart = {
      stitch: 'peyote',
      rows: Array.from({ length: 100_000 }, () => ({ start: 0, cells: Uint16Array.of(1) })),
    }
    fc.assert(
      fc.property(anyEdit, ({ edit }) => {
        for (const chart of [{ stitch: 'brick', rows: [] } as Chart, long, tall]) {
          const done = edit(chart)
          expect(applyPatch(done.chart, done.inverse).chart.rows.length).toBe(chart.rows.length)
        }
      }),
      { numRuns: 40 },
    )
  }, 30_000)
})
