import * as fc from 'fast-check'
import type { CellRef, Chart } from '../../../../shared-core/chart/chart.ts'
import { type ChartEdit, noEdit } from '../../../../shared-core/chart/edits/chart-edit.ts'
import { copyCells, moveCells, pasteCells } from '../../../../shared-core/chart/edits/clip.ts'
import { deleteColumns } from '../../../../shared-core/chart/edits/delete-columns.ts'
import { deleteRows } from '../../../../shared-core/chart/edits/delete-rows.ts'
import { drawLine } from '../../../../shared-core/chart/edits/draw-line.ts'
import {
  drawRectangle,
  rectangleSpans,
} from '../../../../shared-core/chart/edits/draw-rectangle.ts'
import { floodFill } from '../../../../shared-core/chart/edits/flood-fill.ts'
import { insertColumns } from '../../../../shared-core/chart/edits/insert-columns.ts'
import { insertRows } from '../../../../shared-core/chart/edits/insert-rows.ts'
import { mirrorChart } from '../../../../shared-core/chart/edits/mirror-chart.ts'
import { paintCells } from '../../../../shared-core/chart/edits/paint-cells.ts'
import { quarterTurn } from '../../../../shared-core/chart/edits/quarter-turn.ts'
import { replaceSlot } from '../../../../shared-core/chart/edits/replace-slot.ts'
import { growRow, shrinkRow } from '../../../../shared-core/chart/edits/row-ends.ts'
import { shiftRows } from '../../../../shared-core/chart/edits/shift-rows.ts'
import { normaliseChart } from '../../../../shared-core/chart/normalise-chart.ts'

export type NamedEdit = Readonly<{ name: string; edit: (chart: Chart) => ChartEdit }>

const cell: fc.Arbitrary<CellRef> = fc.record({
  row: fc.integer({ min: -4, max: 12 }),
  at: fc.integer({ min: -7, max: 26 }),
})
const stroke = fc.record({ from: cell, to: cell })
const slot = fc.integer({ min: -1, max: 4 })
const row = fc.integer({ min: -2, max: 11 })
const count = fc.integer({ min: 0, max: 4 })
const side = fc.constantFrom('left' as const, 'right' as const)

const named = <T>(
  name: string,
  input: fc.Arbitrary<T>,
  edit: (chart: Chart, value: T) => ChartEdit,
): fc.Arbitrary<NamedEdit> =>
  input.map((value) => ({
    name: `${name} ${fc.stringify(value)}`,
    edit: (chart) => edit(chart, value),
  }))

/** Any edit there is, its places inside the chart, at its ends and outside. */
export const anyEdit: fc.Arbitrary<NamedEdit> = fc.oneof(
  named('paint', fc.tuple(fc.array(cell, { maxLength: 6 }), slot), (chart, [cells, to]) =>
    paintCells(chart, cells, to),
  ),
  named('line', fc.tuple(stroke, slot), (chart, [line, to]) => drawLine(chart, line, to)),
  named('rectangle', fc.tuple(stroke, fc.boolean(), slot), (chart, [box, isFilled, to]) =>
    drawRectangle(chart, { ...box, isFilled }, to),
  ),
  named('fill', fc.tuple(cell, slot), (chart, [from, to]) => floodFill(chart, from, to)),
  named('replace', fc.record({ from: slot, to: slot }), replaceSlot),
  named(
    'shift',
    fc.record({ from: row, to: row, halfBeads: fc.integer({ min: -6, max: 6 }) }),
    shiftRows,
  ),
  named('mirror', fc.constantFrom('left-right', 'top-bottom', 'both'), mirrorChart),
  named('turn', fc.constantFrom('clockwise', 'anticlockwise'), (chart, turn) => {
    const turned = quarterTurn(chart, turn)
    return turned.ok ? turned.value : noEdit(chart)
  }),
  named('insert rows', fc.record({ before: row, count, slot }), insertRows),
  named('delete rows', fc.record({ from: row, count }), deleteRows),
  named(
    'insert columns',
    fc.record({ before: fc.integer({ min: -2, max: 20 }), count, slot }),
    insertColumns,
  ),
  named(
    'delete columns',
    fc.record({ from: fc.integer({ min: -2, max: 20 }), count }),
    deleteColumns,
  ),
  named('grow', fc.record({ row, side, count, slot }), growRow),
  named('shrink', fc.record({ row, side, count }), shrinkRow),
  named('paste', fc.tuple(stroke, cell), (chart, [box, to]) => {
    const clip = copyCells(chart, rectangleSpans(chart, box))
    return clip === undefined ? noEdit(chart) : pasteCells(chart, clip, to)
  }),
  named('move', fc.tuple(stroke, cell), (chart, [box, to]) =>
    moveCells(chart, { selection: rectangleSpans(chart, box), to }),
  ),
  named('normalise', fc.constant(undefined), (chart) => normaliseChart(chart)),
)
