import type { CellRef, Chart } from '../../../../shared-core/chart/chart.ts'
import type { ChartEdit } from '../../../../shared-core/chart/edits/chart-edit.ts'
import { editTo } from '../../../../shared-core/chart/edits/chart-edit.ts'
import { deleteColumns } from '../../../../shared-core/chart/edits/delete-columns.ts'
import { deleteRows } from '../../../../shared-core/chart/edits/delete-rows.ts'
import { insertColumns } from '../../../../shared-core/chart/edits/insert-columns.ts'
import { insertRows } from '../../../../shared-core/chart/edits/insert-rows.ts'
import { mirrorChart } from '../../../../shared-core/chart/edits/mirror-chart.ts'
import { quarterTurn } from '../../../../shared-core/chart/edits/quarter-turn.ts'
import { growRow, shrinkRow } from '../../../../shared-core/chart/edits/row-ends.ts'
import { shiftRows } from '../../../../shared-core/chart/edits/shift-rows.ts'
import { normaliseChart } from '../../../../shared-core/chart/normalise-chart.ts'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import { ok, type Result } from '../../../../shared-core/result.ts'

/** Where an act is done: chart cells of a box, both corners included, and the slot new beads take. */
export type ActPlace = Readonly<{ from: CellRef; to: CellRef; slot: number }>

type Done = Result<ChartEdit, Refusal>
type Group = 'rows' | 'columns' | 'ends' | 'chart'

export type TableAct = Readonly<{
  name: string
  group: Group
  label: string
  key?: string
  do: (chart: Chart, place: ActPlace) => Done
}>

/** What is done to whole rows, columns, row ends or the whole chart. */
export const tableActs: readonly TableAct[] = [
  {
    name: 'row-above',
    group: 'rows',
    label: 'Insert a row above',
    key: 'I',
    do: (chart, place) =>
      ok(insertRows(chart, { before: topOf(place), count: 1, slot: place.slot })),
  },
  {
    name: 'row-below',
    group: 'rows',
    label: 'Insert a row below',
    key: 'Shift I',
    do: (chart, place) =>
      ok(insertRows(chart, { before: bottomOf(place) + 1, count: 1, slot: place.slot })),
  },
  {
    name: 'delete-rows',
    group: 'rows',
    label: 'Delete the row',
    key: 'D',
    do: (chart, place) =>
      ok(deleteRows(chart, { from: topOf(place), count: bottomOf(place) - topOf(place) + 1 })),
  },
  {
    name: 'shift-left',
    group: 'rows',
    label: 'Shift the row to the left',
    key: '<',
    do: (chart, place) => ok(shifted(chart, place, -2)),
  },
  {
    name: 'shift-right',
    group: 'rows',
    label: 'Shift the row to the right',
    key: '>',
    do: (chart, place) => ok(shifted(chart, place, 2)),
  },
  {
    name: 'column-left',
    group: 'columns',
    label: 'Insert a column to the left',
    key: 'C',
    do: (chart, place) =>
      ok(insertColumns(chart, { before: leftOf(place), count: 1, slot: place.slot })),
  },
  {
    name: 'column-right',
    group: 'columns',
    label: 'Insert a column to the right',
    key: 'Shift C',
    do: (chart, place) =>
      ok(insertColumns(chart, { before: rightOf(place) + 2, count: 1, slot: place.slot })),
  },
  {
    name: 'delete-columns',
    group: 'columns',
    label: 'Delete the column',
    key: 'Shift D',
    do: (chart, place) =>
      ok(
        deleteColumns(chart, {
          from: leftOf(place),
          count: Math.floor((rightOf(place) - leftOf(place)) / 2) + 1,
        }),
      ),
  },
  ...(['left', 'right'] as const).flatMap((side): readonly TableAct[] => [
    {
      name: `grow-${side}`,
      group: 'ends',
      label: `One bead more at the ${side} end`,
      key: side === 'left' ? 'Shift G' : 'G',
      do: (chart, place) =>
        ok(
          eachRow(chart, place, (now, row) =>
            growRow(now, { row, side, count: 1, slot: place.slot }),
          ),
        ),
    },
    {
      name: `shrink-${side}`,
      group: 'ends',
      label: `One bead less at the ${side} end`,
      key: side === 'left' ? 'Shift N' : 'N',
      do: (chart, place) =>
        ok(eachRow(chart, place, (now, row) => shrinkRow(now, { row, side, count: 1 }))),
    },
  ]),
  {
    name: 'mirror-left-right',
    group: 'chart',
    label: 'Mirror the chart left to right',
    do: (chart) => ok(mirrorChart(chart, 'left-right')),
  },
  {
    name: 'mirror-top-bottom',
    group: 'chart',
    label: 'Mirror the chart top to bottom',
    do: (chart) => ok(mirrorChart(chart, 'top-bottom')),
  },
  {
    name: 'turn-clockwise',
    group: 'chart',
    label: 'Turn the chart clockwise',
    do: (chart) => quarterTurn(chart, 'clockwise'),
  },
  {
    name: 'turn-anticlockwise',
    group: 'chart',
    label: 'Turn the chart anticlockwise',
    do: (chart) => quarterTurn(chart, 'anticlockwise'),
  },
  {
    name: 'trim',
    group: 'chart',
    label: 'Take empty edges away',
    do: (chart) => ok(normaliseChart(chart)),
  },
]

/** The act a key asks for; the letters are read as they are written on the sheet. */
export function actOfKey(key: string): TableAct | undefined {
  const isShifted = /^[A-Z]$/.test(key)
  const name = isShifted ? `Shift ${key}` : key.toUpperCase()
  return tableActs.find((act) => act.key === name)
}

const topOf = ({ from, to }: ActPlace) => Math.min(from.row, to.row)
const bottomOf = ({ from, to }: ActPlace) => Math.max(from.row, to.row)
const leftOf = ({ from, to }: ActPlace) => Math.min(from.at, to.at)
const rightOf = ({ from, to }: ActPlace) => Math.max(from.at, to.at)

function shifted(chart: Chart, place: ActPlace, halfBeads: number): ChartEdit {
  return shiftRows(chart, { from: topOf(place), to: bottomOf(place), halfBeads })
}

/** Does one edit after the other, a row each, as one. */
function eachRow(
  chart: Chart,
  place: ActPlace,
  edit: (chart: Chart, row: number) => ChartEdit,
): ChartEdit {
  let now = chart
  let moved = { row: 0, at: 0 }
  for (let row = topOf(place); row <= bottomOf(place); row += 1) {
    const done = edit(now, row)
    now = done.chart
    moved = { row: moved.row + done.shift.row, at: moved.at + done.shift.at }
  }
  return editTo(chart, now, moved)
}
