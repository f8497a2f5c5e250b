import * as fc from 'fast-check'
import {
  type Chart,
  type ChartRow,
  STITCH_KINDS,
  type StitchKind,
} from '../../../shared-core/chart/chart.ts'

type ChartLimits = Readonly<{ maxRows?: number; maxCells?: number; slots?: number }>

/** A legal chart of a stitch: any extents, blanks and empty rows, positions in step. */
export function anyChartOf(
  stitch: StitchKind,
  { maxRows = 9, maxCells = 9, slots = 4 }: ChartLimits = {},
): fc.Arbitrary<Chart> {
  const cell = fc.oneof(
    { weight: 1, arbitrary: fc.constant(0) },
    { weight: 4, arbitrary: fc.integer({ min: 1, max: slots }) },
  )
  const row = fc.record({
    place: fc.integer({ min: 0, max: 6 }),
    cells: fc.array(cell, { maxLength: maxCells }),
  })
  return fc
    .record({ rows: fc.array(row, { maxLength: maxRows }), offset: fc.integer({ min: 0, max: 1 }) })
    .map(({ rows, offset }) => ({
      stitch,
      rows: rows.map(
        ({ place, cells }, number): ChartRow => ({
          start: 2 * place + phase(stitch, number, offset),
          cells: Uint16Array.from(cells),
        }),
      ),
    }))
}

/** A legal chart of any stitch. */
export function anyChart(limits: ChartLimits = {}): fc.Arbitrary<Chart> {
  return fc.constantFrom(...STITCH_KINDS).chain((stitch) => anyChartOf(stitch, limits))
}

function phase(stitch: StitchKind, row: number, offset: number): number {
  if (stitch === 'brick') return (row + offset) % 2
  return stitch === 'right-angle-weave' ? 1 - (row % 2) : 0
}
