import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { beadExtent } from '../../../../shared-core/chart/bead-extent.ts'
import {
  mirrorAxes,
  mirroredRuns,
  withMirrored,
} from '../../../../shared-core/chart/edits/mirror-runs.ts'
import { writeRuns } from '../../../../shared-core/chart/edits/write-runs.ts'
import { misplacedRows, parity } from '../../../../shared-core/chart/row-phase.ts'
import { anyChart } from '../any-chart.ts'

const ways = fc.constantFrom('left-right' as const, 'top-bottom' as const, 'both' as const)
const anyRun = fc.record({
  row: fc.integer({ min: -3, max: 10 }),
  at: fc.integer({ min: -6, max: 20 }),
  count: fc.integer({ min: 1, max: 5 }),
  cell: fc.constantFrom(0, 1, 2),
})

/** Single cells of runs, in order of place. */
function cellsOf(runs: Iterable<Readonly<{ row: number; at: number; count: number }>>) {
  return [...runs]
    .flatMap(({ row, at, count }) =>
      Array.from({ length: count }, (_, i) => `${row}:${at + 2 * i}`),
    )
    .toSorted()
}

describe('mirrored runs', () => {
  it('come back when they are mirrored twice, on cells of the stitch', () => {
    fc.assert(
      fc.property(anyChart(), anyRun, ways, (chart, run, way) => {
        const axes = mirrorAxes(chart)
        // Columns of peyote that change height land half a row off, and come to lie on the nearest.
        const isOffStep =
          chart.stitch === 'peyote' && way === 'both' && parity((axes?.across ?? 0) / 2) === 1
        fc.pre(axes !== undefined && !isOffStep && (chart.stitch !== 'peyote' || run.at % 2 === 0))
        if (axes === undefined) return
        const twice = mirroredRuns(mirroredRuns([run], axes, way), axes, way)
        expect(cellsOf(twice)).toEqual(cellsOf([run]))
      }),
    )
  })

  it('leave a chart in step with its stitch', () => {
    fc.assert(
      fc.property(anyChart(), anyRun, ways, (chart, run, way) => {
        fc.pre(misplacedRows(chart).length === 0)
        const axes = mirrorAxes(chart)
        if (axes === undefined) return
        const { chart: drawn } = writeRuns(chart, withMirrored([run], axes, way))
        expect(misplacedRows(drawn)).toEqual([])
      }),
    )
  })

  it('have no axes where there is no bead', () => {
    fc.assert(
      fc.property(anyChart(), (chart) => {
        expect(mirrorAxes(chart) === undefined).toBe(beadExtent(chart.rows) === undefined)
      }),
    )
  })
})
