import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { plus } from '../../../../renderer/rooms/designs/table/cells.ts'
import type { DraftSession } from '../../../../renderer/rooms/designs/table/draft-session.ts'
import { tableActs } from '../../../../renderer/rooms/designs/table/table-acts.ts'
import type { ClipBoard } from '../../../../renderer/rooms/designs/table/table-clip.ts'
import type { TableModel } from '../../../../renderer/rooms/designs/table/table-model.ts'
import { tools } from '../../../../renderer/rooms/designs/table/tools.ts'
import { type Chart, STITCH_KINDS, slotAt } from '../../../../shared-core/chart/chart.ts'
import { misplacedRows } from '../../../../shared-core/chart/row-phase.ts'
import { anyChart } from '../../../shared-core/chart/any-chart.ts'
import { cells, empty, openTable } from './open-table.ts'

const anyCell = fc.record({
  row: fc.integer({ min: -3, max: 11 }),
  at: fc.integer({ min: -6, max: 24 }),
})
type Deed = (model: TableModel, session: DraftSession) => unknown
const anyDeed: fc.Arbitrary<Deed> = fc.oneof(
  fc
    .constantFrom('undo', 'redo')
    .map((name) => (_: TableModel, session: DraftSession) => session[name as 'undo']()),
  fc.constantFrom(...tools).map(
    ({ name }) =>
      (model: TableModel) =>
        model.chooseTool(name),
  ),
  fc.nat(4).map((slot) => (model: TableModel) => model.chooseSlot(slot)),
  fc
    .constantFrom('none', 'left-right', 'top-bottom', 'four-ways')
    .map((way) => (model: TableModel) => model.chooseMirror(way as 'none', way)),
  fc.array(anyCell, { minLength: 1, maxLength: 4 }).map((way) => (model: TableModel) => {
    model.down(way[0] ?? { row: 0, at: 0 })
    model.to(way)
    model.up()
  }),
  fc.constantFrom(...tableActs).map((act) => (model: TableModel) => model.act(act)),
  fc.tuple(fc.integer({ min: -2, max: 2 }), fc.integer({ min: -2, max: 2 }), fc.boolean()).map(
    ([rows, beads, isDrawing]) =>
      (model: TableModel) =>
        model.step(rows, beads, isDrawing),
  ),
  fc
    .constantFrom('press', 'release', 'cancel', 'copy', 'cut', 'paste', 'remove', 'selectAll')
    .map((name) => (model: TableModel) => void model[name as 'press']()),
  fc
    .constantFrom('left-right', 'top-bottom', 'both')
    .map((way) => (model: TableModel) => model.mirrorSelected(way as 'both')),
  fc.tuple(fc.integer({ min: -2, max: 2 }), fc.integer({ min: -2, max: 2 })).map(
    ([rows, beads]) =>
      (model: TableModel) =>
        model.nudge(rows, beads),
  ),
)

describe('the drawing table', () => {
  it('keeps whatever is done in step with the stitch, and undoes all of it to the first chart', async () => {
    const drawable = anyChart().filter((chart) => misplacedRows(chart).length === 0)
    await fc.assert(
      fc.asyncProperty(drawable, fc.array(anyDeed, { maxLength: 12 }), async (chart, deeds) => {
        const { model, session } = openTable(chart)
        const { body } = session.view()
        for (const deed of deeds) {
          await deed(model, session)
          expect(misplacedRows(model.view().chart)).toEqual([])
        }
        model.cancel()
        while (session.view().undoLabel !== undefined) await session.undo()
        expect(session.view().body).toEqual(body)
        expect(model.view().moved.row).toBe(0)
        expect(model.view().moved.at).toBe(0)
      }),
    )
  })

  it.each(STITCH_KINDS)('draws without a gap however far apart two points are, in %s', (stitch) => {
    const { model } = openTable(empty(stitch))
    model.down({ row: 0, at: stitch === 'right-angle-weave' ? 1 : 0 })
    model.to([{ row: 6, at: 14 }])
    model.up()
    const { chart } = model.view()
    expect(chart.rows.every(({ cells: row }) => row.some((cell) => cell !== 0))).toBe(true)
  })

  it('stays under the hand when the chart grows to the left and at the top', () => {
    const { model } = openTable({
      stitch: 'square',
      rows: [{ start: 0, cells: Uint16Array.of(1) }],
    })
    model.chooseSlot(1)
    model.down({ row: 0, at: 0 })
    model.to([{ row: -2, at: -6 }])
    model.up()
    const { chart, cell, moved } = model.view()
    expect(cell).toEqual({ row: -2, at: -6 })
    expect(slotAt(chart, plus(cell, moved))).toBe(1)
    expect(slotAt(chart, plus({ row: 0, at: 0 }, moved))).toBe(1)
  })

  it('moves the crosshair down brick rows without drifting to a side', () => {
    const { model } = openTable(empty('brick'))
    model.step(0, 3, false)
    for (let row = 0; row < 9; row += 1) model.step(1, 0, false)
    model.step(1, 0, false)
    expect(model.view().cell).toEqual({ row: 10, at: 6 })
  })

  it('makes one stroke of what is drawn while Shift is held', () => {
    const { model, session } = openTable(empty('loom'))
    for (let step = 0; step < 4; step += 1) model.step(0, 1, true)
    model.release()
    expect(cells(model)).toEqual([[1, 1, 1, 1, 1]])
    expect(session.view()).toMatchObject({ position: 1, undoLabel: 'Paint A' })
  })

  it('leaves off a stroke and keeps nothing of it', () => {
    const { model, session } = openTable(empty('loom'))
    model.chooseTool('box')
    model.press()
    model.step(2, 3, false)
    expect(cells(model)).toHaveLength(3)
    model.cancel()
    expect(cells(model)).toEqual([])
    expect(session.view().position).toBe(0)
  })

  it('mirrors both ways while drawing', () => {
    const rows = [1, 1, 1].map(() => ({ start: 0, cells: Uint16Array.of(1, 1, 1) }))
    const { model } = openTable({ stitch: 'square', rows })
    model.chooseSlot(1)
    model.chooseMirror('four-ways', '')
    model.down({ row: 0, at: 0 })
    model.up()
    expect(cells(model)).toEqual([
      [2, 1, 2],
      [1, 1, 1],
      [2, 1, 2],
    ])
  })

  it('selects, copies and pastes with the keyboard, and says when there is nothing to', () => {
    const { model } = openTable({
      stitch: 'square',
      rows: [{ start: 0, cells: Uint16Array.of(1, 2) }],
    })
    model.paste()
    expect(model.view().told).toBe('Nothing has been copied yet')
    model.chooseTool('select')
    model.press()
    model.step(0, 1, false)
    model.press()
    model.copy()
    model.step(1, 0, false)
    model.goTo('row-start')
    model.paste()
    expect(cells(model)[1]?.filter((cell) => cell !== 0)).toEqual([1, 2])
    model.cut()
    expect(cells(model)[1]?.some((cell) => cell !== 0)).toBe(false)
  })

  it('pastes on another design in the slots that look the same there, and adds those it has none of, in one step', async () => {
    const clipBoard: ClipBoard = { kept: undefined }
    const row = { start: 0, cells: Uint16Array.of(1, 2, 3) }
    const from = openTable(
      { stitch: 'square', rows: [row] },
      { clipBoard, colours: ['#111111', '#222222', '#333333'] },
    )
    from.model.selectAll()
    from.model.copy()
    const { session, model } = openTable(
      { stitch: 'square', rows: [{ start: 0, cells: Uint16Array.of(1) }] },
      { clipBoard, colours: ['#333333', '#111111'] },
    )
    model.step(1, 0, false)
    const { body } = session.view()
    model.paste()
    expect(session.view()).toMatchObject({ position: 1, undoLabel: 'Paste' })
    expect(cells(model)[1]?.filter((cell) => cell !== 0)).toEqual([2, 3, 1])
    expect(session.view().body.palette.map(({ label, colourHex }) => label + colourHex)).toEqual([
      'A#333333',
      'B#111111',
      'C#222222',
    ])
    const pasted = session.view().body
    await session.undo()
    expect(session.view()).toMatchObject({ body, position: 0, redoLabel: 'Paste' })
    await session.redo()
    expect(session.view()).toMatchObject({ body: pasted, position: 1 })
  })

  it('takes beads away with the other end of the pen, whatever the tool', () => {
    const chart: Chart = { stitch: 'square', rows: [{ start: 0, cells: Uint16Array.of(1, 1, 1) }] }
    const { model } = openTable(chart)
    model.chooseTool('box')
    model.down({ row: 0, at: 0 }, false, 'erase')
    model.to([{ row: 0, at: 2 }])
    model.up()
    expect(cells(model)).toEqual([[0, 0, 1]])
    expect(model.view().tool).toBe('box')
  })

  it('says how much is selected', () => {
    const row = () => ({ start: 0, cells: Uint16Array.of(1, 1, 1) })
    const { model } = openTable({ stitch: 'square', rows: [row(), row()] })
    model.chooseTool('select')
    model.press()
    model.step(1, 0, false)
    model.step(0, 2, false)
    model.press()
    expect(model.view().told).toBe('2 rows selected, 3 beads across')
  })

  it('says so when the last bead is gone', () => {
    const { model } = openTable({ stitch: 'brick', rows: [{ start: 0, cells: Uint16Array.of(1) }] })
    model.remove()
    expect(model.view().told).toContain('No bead is left')
    model.remove()
    expect(model.view().told).toBe('Nothing changed')
  })
})
