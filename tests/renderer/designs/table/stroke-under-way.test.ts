import { describe, expect, it } from 'vitest'
import { tableActs } from '../../../../renderer/rooms/designs/table/table-acts.ts'
import type { TableModel } from '../../../../renderer/rooms/designs/table/table-model.ts'
import { cells, empty, openTable } from './open-table.ts'

describe('a stroke under way', () => {
  const others: readonly (readonly [string, (model: TableModel) => void])[] = [
    ...tableActs.map((act) => [act.label, (model: TableModel) => model.act(act)] as const),
    ['Cut', (model) => model.cut()],
    ['Copy and paste', (model) => void (model.copy() && model.paste())],
    ['Take away', (model) => model.remove()],
    ['Select everything', (model) => model.selectAll()],
    ['Draw with the pointer', (model) => model.down({ row: 1, at: 1 })],
  ]
  it.each(others)('ends what is drawn with Shift before anything else is done: %s', (_, deed) => {
    const drawn = (isEndedFirst: boolean) => {
      const { model, session } = openTable({
        stitch: 'brick',
        rows: [{ start: 0, cells: Uint16Array.of(1, 2) }],
      })
      model.step(-1, 0, true)
      model.step(0, 1, true)
      expect(model.view().isDrawing).toBe(true)
      if (isEndedFirst) model.release()
      deed(model)
      model.up()
      return { cells: cells(model), position: session.view().position }
    }
    expect(drawn(false)).toEqual(drawn(true))
  })

  it('moves what is being dragged before a nudge moves it on', () => {
    const { model } = openTable({
      stitch: 'square',
      rows: [{ start: 0, cells: Uint16Array.of(1) }],
    })
    model.selectAll()
    model.down({ row: 0, at: 0 })
    model.to([{ row: 0, at: 4 }])
    model.nudge(0, 1)
    model.up()
    expect(model.view().selection).toEqual({ from: { row: 0, at: 6 }, to: { row: 0, at: 6 } })
  })

  it('leaves off a stroke when an undo takes away what it was begun on', async () => {
    const { model, session } = openTable(empty('brick'))
    model.step(0, 1, true)
    model.release()
    model.step(1, 0, true)
    await session.undo()
    expect(model.view()).toMatchObject({ isDrawing: false, told: 'Left off' })
    model.up()
    expect(cells(model)).toEqual([])
    expect(session.view().position).toBe(0)
  })
})
