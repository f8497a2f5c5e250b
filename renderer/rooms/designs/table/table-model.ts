import { type CellRef, slotAt, slotLabel } from '../../../../shared-core/chart/chart.ts'
import { replaceSlot } from '../../../../shared-core/chart/edits/replace-slot.ts'
import { isInside, minus, nearChart, plus, rowEnd, sameCell, snapped } from './cells.ts'
import { fillFrom } from './fill-from.ts'
import { LiveStroke } from './live-stroke.ts'
import { moveSelection } from './selection-edits.ts'
import { TableSelection } from './table-selection.ts'
import { selectionWords } from './tell-cell.ts'
import { type MirrorWay, strokeLabel, type ToolName, tools } from './tools.ts'

/** The drawing table without its picture: tools, crosshair, selection, and the stroke under way. */
export class TableModel extends TableSelection {
  choosePart(partId: string): void {
    this.busy = undefined
    this.set({ partId, selection: undefined })
    this.toFirstBead()
    this.set({ told: this.view().panel?.name ?? '' })
  }

  chooseTool(tool: ToolName): void {
    this.cancel()
    this.set({ tool, told: tools.find(({ name }) => name === tool)?.label ?? '' })
  }

  chooseSlot(slot: number): void {
    const most = this.host.view().body.palette.length - 1
    if (slot >= 0 && slot <= most) this.set({ slot, told: `Slot ${slotLabel(slot)}` })
  }

  chooseMirror(mirror: MirrorWay, told: string): void {
    this.set({ mirror, told })
  }

  /** The pointer goes down, or the space bar; a pen turned round takes beads away whatever the tool. */
  down(cell: CellRef, byKey = false, tool: ToolName = this.state.tool): void {
    this.settle()
    const { mirror, selection } = this.state
    const slot = this.slot()
    this.#point(cell)
    if (slot < 0) {
      this.set({ told: 'The palette is empty; add a slot to draw with' })
      return
    }
    const base = this.chart()
    const moved = this.moved()
    const on = this.panel()?.chart
    switch (tool) {
      case 'move-picture':
        return
      case 'pick':
        this.#pick(plus(cell, moved))
        return
      case 'fill':
        this.#fill(plus(cell, moved))
        return
      case 'replace':
        this.#replace(slotAt(base, plus(cell, moved)))
        return
      case 'select':
        this.busy =
          selection !== undefined && isInside(selection, cell) && !byKey
            ? { kind: 'move', from: cell, selection, on, placed: undefined }
            : { kind: 'select', from: cell, byKey }
        if (this.busy.kind === 'select') this.set({ selection: undefined })
        return
      default: {
        const live = new LiveStroke({ base, tool, slot, mirror })
        live.to(plus(cell, moved))
        const isTrail = tool === 'paint' || tool === 'erase'
        const label = strokeLabel(tool, slot)
        this.busy = { kind: 'draw', live, on, isTrail, base: moved, label, byKey }
        this.set({})
      }
    }
  }

  /** The pointer moves on over cells, in order. */
  to(cells: readonly CellRef[]): void {
    const busy = this.busy
    const last = cells.at(-1)
    if (busy === undefined || last === undefined) return
    if (busy.kind === 'draw') {
      // A rectangle or a line follows the last cell alone.
      for (const cell of busy.isTrail ? cells : [last]) busy.live.to(plus(cell, busy.base))
    } else if (busy.kind === 'select') {
      this.state = { ...this.state, selection: { from: busy.from, to: last } }
    } else {
      const by = minus(last, busy.from)
      const placed = moveSelection(this.chart(), this.toChart(busy.selection), by)
      this.busy = { ...busy, placed }
    }
    this.#point(last)
  }

  /** The pointer goes up: what was drawn becomes a stroke. */
  up(): void {
    const busy = this.busy
    this.busy = undefined
    if (busy?.kind === 'draw') this.draw(busy.label, busy.live.edit())
    else if (busy?.kind === 'move' && busy.placed !== undefined) {
      this.put('Move the selection', busy.placed)
    } else if (busy?.kind === 'select') this.set({ told: selectionWords(this.state.selection) })
    else this.set({})
  }

  protected settle(): void {
    if (this.busy !== undefined) this.up()
  }

  /** Leaves the stroke under way, or the selection. */
  cancel(): void {
    if (this.busy !== undefined) {
      const isSelecting = this.busy.kind === 'select'
      this.busy = undefined
      this.set({ told: 'Left off', ...(isSelecting ? { selection: undefined } : {}) })
    } else if (this.state.selection !== undefined) {
      this.set({ selection: undefined, told: 'Nothing is selected' })
    }
  }

  /** Whether there is something that Escape would leave. */
  get isBusy(): boolean {
    return this.busy !== undefined || this.state.selection !== undefined
  }

  /** The space bar: begins and ends what a pointer would draw between down and up. */
  press(): void {
    const { tool, cell } = this.state
    if (this.busy !== undefined) {
      this.up()
      return
    }
    this.down(cell, true)
    if (tool === 'paint' || tool === 'erase') this.up()
    else if (this.busy !== undefined) this.set({ told: 'From here; move, then Space to end' })
  }

  /** Moves the crosshair; with `isDrawing` the tool is drawn along, until `release`. */
  step(rows: number, beads: number, isDrawing: boolean): void {
    const { cell, wantedAt } = this.state
    if (isDrawing && this.busy === undefined) this.down(cell, true)
    const wanted = beads === 0 ? wantedAt : cell.at + 2 * beads
    this.#go({ row: cell.row + rows, at: beads === 0 ? wantedAt : wanted }, wanted)
  }

  /** Ends what `step` has drawn. */
  release(): void {
    const busy = this.busy
    if (busy !== undefined && busy.kind !== 'move' && busy.byKey) this.up()
  }

  /** To the first or last bead of the row, or to the first or last row. */
  goTo(where: 'row-start' | 'row-end' | 'top' | 'bottom'): void {
    const chart = this.chart()
    const moved = this.moved()
    const here = plus(this.state.cell, moved)
    const target =
      where === 'row-start' || where === 'row-end'
        ? rowEnd(chart, here, where === 'row-start' ? 'first' : 'last')
        : { row: where === 'top' ? 0 : Math.max(0, chart.rows.length - 1), at: here.at }
    const cell = minus(target, moved)
    this.#go(cell, where === 'top' || where === 'bottom' ? this.state.wantedAt : cell.at)
  }

  #go(to: CellRef, wantedAt: number): void {
    const moved = this.moved()
    const near = nearChart(this.chart(), plus(to, moved))
    const cell = minus(snapped(this.chart(), near), moved)
    if (this.busy !== undefined) this.to([cell])
    this.set({ cell, wantedAt, told: '' })
  }

  #point(cell: CellRef): void {
    if (sameCell(cell, this.state.cell) && this.busy === undefined) return
    this.set({ cell, wantedAt: cell.at, told: '' })
  }

  #pick(cell: CellRef): void {
    const slot = slotAt(this.chart(), cell)
    if (slot < 0) this.set({ told: 'There is no bead here' })
    else this.set({ slot, told: `Slot ${slotLabel(slot)}` })
  }

  #fill(cell: CellRef): void {
    const slot = this.slot()
    const edit = fillFrom(this.chart(), cell, { slot, mirror: this.state.mirror })
    if (edit === undefined) this.set({ told: 'Fill works on beads and on holes between them' })
    else this.draw(`Fill with ${slotLabel(slot)}`, edit)
  }

  #replace(from: number): void {
    const to = this.slot()
    if (from < 0) this.set({ told: 'There is no bead here' })
    else {
      const label = `Replace ${slotLabel(from)} by ${slotLabel(to)}`
      this.draw(label, replaceSlot(this.chart(), { from, to }))
    }
  }
}
