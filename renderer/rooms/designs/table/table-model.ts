import { beadExtent } from '../../../../shared-core/chart/bead-extent.ts'
import { type CellRef, type Chart, slotAt, slotLabel } from '../../../../shared-core/chart/chart.ts'
import type { ChartEdit } from '../../../../shared-core/chart/edits/chart-edit.ts'
import { type Clip, copyCells } from '../../../../shared-core/chart/edits/clip.ts'
import type { Stroke } from '../../../../shared-core/chart/edits/draw-line.ts'
import { rectangleSpans } from '../../../../shared-core/chart/edits/draw-rectangle.ts'
import { replaceSlot } from '../../../../shared-core/chart/edits/replace-slot.ts'
import { sharedChart } from '../../../../shared-core/chart/shared-rows.ts'
import { stitchName } from '../../../../shared-core/chart/stitch-name.ts'
import type { DesignBody, Panel } from '../../../../shared-core/design/design.ts'
import { isInside, minus, plus, rowEnd, sameCell, snapped } from './cells.ts'
import type { DraftView } from './draft-session.ts'
import { fillFrom } from './fill-from.ts'
import { LiveStroke } from './live-stroke.ts'
import {
  mirrorSelection,
  moveSelection,
  type Placed,
  pasteAt,
  takeAway,
} from './selection-edits.ts'
import type { TableAct } from './table-acts.ts'
import { type MirrorWay, type ToolName, tools } from './tools.ts'

/** What the table draws on: the draft, seen as it is now. */
export type TableHost = Readonly<{
  view: () => DraftView
  stroke: (label: string, partId: string, edit: ChartEdit) => void
  change: (label: string, next: DesignBody) => void
}>

/** The drawing table as it is shown. Cells are the table's own: see `Lattice`. */
export type TableView = Readonly<{
  panel: Panel | undefined
  /** With the stroke that is being drawn. */
  chart: Chart
  /** How far the chart's cells lie from the table's. */
  moved: CellRef
  isDrawing: boolean
  tool: ToolName
  slot: number
  mirror: MirrorWay
  cell: CellRef
  selection: Stroke | undefined
  hasClip: boolean
  /** What has just been done or is to be known, said to those who do not see it. */
  told: string
}>

type State = Readonly<{
  partId: string | undefined
  tool: ToolName
  slot: number
  mirror: MirrorWay
  cell: CellRef
  /** Where the crosshair would lie in a row that has such a place: it does not drift on its way down. */
  wantedAt: number
  selection: Stroke | undefined
  clip: Clip | undefined
  told: string
}>

/** What the pointer or the keys are in the middle of. */
type Busy =
  | Readonly<{ kind: 'draw'; live: LiveStroke; base: CellRef; label: string; byKey: boolean }>
  | Readonly<{ kind: 'select'; from: CellRef; byKey: boolean }>
  | Readonly<{ kind: 'move'; from: CellRef; selection: Stroke; placed: Placed | undefined }>

const NOTHING: CellRef = { row: 0, at: 0 }
const EMPTY: Chart = { stitch: 'square', rows: [] }

/** The drawing table without its picture: tools, crosshair, selection, and the stroke under way. */
export class TableModel {
  readonly #host: TableHost
  readonly #listeners = new Set<() => void>()
  #busy: Busy | undefined
  #state: State
  #view: TableView | undefined

  constructor(host: TableHost) {
    this.#host = host
    const panel = host.view().body.parts.find((part): part is Panel => part.kind === 'panel')
    this.#state = {
      partId: panel?.id,
      tool: 'paint',
      slot: 0,
      mirror: 'none',
      cell: NOTHING,
      wantedAt: 0,
      selection: undefined,
      clip: undefined,
      told: '',
    }
    this.#toFirstBead()
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  readonly view = (): TableView => {
    this.#view ??= this.#look()
    return this.#view
  }

  /** To be called when the draft has changed. */
  readonly refresh = (): void => this.#set({})

  choosePart(partId: string): void {
    this.#busy = undefined
    this.#set({ partId, selection: undefined })
    this.#toFirstBead()
    this.#set({ told: this.view().panel?.name ?? '' })
  }

  chooseTool(tool: ToolName): void {
    this.cancel()
    this.#set({ tool, told: tools.find(({ name }) => name === tool)?.label ?? '' })
  }

  chooseSlot(slot: number): void {
    const most = this.#host.view().body.palette.length - 1
    if (slot >= 0 && slot <= most) this.#set({ slot, told: `Slot ${slotLabel(slot)}` })
  }

  chooseMirror(mirror: MirrorWay, told: string): void {
    this.#set({ mirror, told })
  }

  tell(told: string): void {
    this.#set({ told })
  }

  /** The pointer goes down, or the space bar. */
  down(cell: CellRef, byKey = false): void {
    const { tool, slot, mirror, selection } = this.#state
    this.#point(cell)
    const base = this.#chart()
    const moved = this.#moved()
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
        this.#busy =
          selection !== undefined && isInside(selection, cell) && !byKey
            ? { kind: 'move', from: cell, selection, placed: undefined }
            : { kind: 'select', from: cell, byKey }
        if (this.#busy.kind === 'select') this.#set({ selection: undefined })
        return
      default: {
        const live = new LiveStroke({ base, tool, slot, mirror })
        live.to(plus(cell, moved))
        this.#busy = { kind: 'draw', live, base: moved, label: this.#strokeLabel(), byKey }
        this.#set({})
      }
    }
  }

  /** The pointer moves on over cells, in order. */
  to(cells: readonly CellRef[]): void {
    const busy = this.#busy
    const last = cells.at(-1)
    if (busy === undefined || last === undefined) return
    if (busy.kind === 'draw') {
      // A rectangle or a line follows the last cell alone.
      const isTrail = this.#state.tool === 'paint' || this.#state.tool === 'erase'
      for (const cell of isTrail ? cells : [last]) busy.live.to(plus(cell, busy.base))
    } else if (busy.kind === 'select') {
      this.#state = { ...this.#state, selection: { from: busy.from, to: last } }
    } else {
      const by = minus(last, busy.from)
      const placed = moveSelection(this.#chart(), this.#toChart(busy.selection), by)
      this.#busy = { ...busy, placed }
    }
    this.#point(last)
  }

  /** The pointer goes up: what was drawn becomes a stroke. */
  up(): void {
    const busy = this.#busy
    this.#busy = undefined
    if (busy?.kind === 'draw') this.#stroke(busy.label, busy.live.edit())
    else if (busy?.kind === 'move' && busy.placed !== undefined) {
      this.#place('Move the selection', busy.placed)
    } else if (busy?.kind === 'select' && !busy.byKey && this.#state.selection === undefined) {
      this.#set({ told: 'Nothing is selected' })
    } else this.#set({})
  }

  /** Leaves the stroke under way, or the selection. */
  cancel(): void {
    if (this.#busy !== undefined) {
      const isSelecting = this.#busy.kind === 'select'
      this.#busy = undefined
      this.#set({ told: 'Left off', ...(isSelecting ? { selection: undefined } : {}) })
    } else if (this.#state.selection !== undefined) {
      this.#set({ selection: undefined, told: 'Nothing is selected' })
    }
  }

  /** Whether there is something that Escape would leave. */
  get isBusy(): boolean {
    return this.#busy !== undefined || this.#state.selection !== undefined
  }

  /** The space bar: begins and ends what a pointer would draw between down and up. */
  press(): void {
    const { tool, cell } = this.#state
    if (this.#busy !== undefined) {
      this.up()
      return
    }
    this.down(cell, true)
    if (tool === 'paint' || tool === 'erase') this.up()
    else if (this.#busy !== undefined) this.#set({ told: 'From here; move, then Space to end' })
  }

  /** Moves the crosshair; with `isDrawing` the tool is drawn along, until `release`. */
  step(rows: number, beads: number, isDrawing: boolean): void {
    const { cell, wantedAt } = this.#state
    if (isDrawing && this.#busy === undefined) this.down(cell, true)
    const wanted = beads === 0 ? wantedAt : cell.at + 2 * beads
    this.#go({ row: cell.row + rows, at: beads === 0 ? wantedAt : wanted }, wanted)
  }

  /** Ends what `step` has drawn. */
  release(): void {
    const busy = this.#busy
    if (busy !== undefined && busy.kind !== 'move' && busy.byKey) this.up()
  }

  /** To the first or last bead of the row, or to the first or last row. */
  goTo(where: 'row-start' | 'row-end' | 'top' | 'bottom'): void {
    const chart = this.#chart()
    const moved = this.#moved()
    const here = plus(this.#state.cell, moved)
    const target =
      where === 'row-start' || where === 'row-end'
        ? rowEnd(chart, here, where === 'row-start' ? 'first' : 'last')
        : { row: where === 'top' ? 0 : Math.max(0, chart.rows.length - 1), at: here.at }
    const cell = minus(target, moved)
    this.#go(cell, where === 'top' || where === 'bottom' ? this.#state.wantedAt : cell.at)
  }

  /** Does an act on the selection, or on the crosshair's row and column. */
  act(act: TableAct): void {
    const { cell, selection, slot } = this.#state
    const box = this.#toChart(selection ?? { from: cell, to: cell })
    const done = act.do(this.#chart(), { ...box, slot })
    if (!done.ok) this.#set({ told: `${done.error.message} ${done.error.next}` })
    else this.#stroke(act.label, done.value)
  }

  copy(): boolean {
    const clip = copyCells(this.#chart(), this.#spans())
    if (clip === undefined) this.#set({ told: 'There is no bead to copy here' })
    else this.#set({ clip, told: 'Copied' })
    return clip !== undefined
  }

  cut(): void {
    if (this.copy()) this.#stroke('Cut', takeAway(this.#chart(), this.#spans()))
  }

  paste(): void {
    const { clip, cell } = this.#state
    const { stitch } = this.#chart()
    if (clip === undefined) this.#set({ told: 'Nothing has been copied yet' })
    else if (clip.stitch !== stitch) {
      const [from, to] = [stitchName(clip.stitch), stitchName(stitch)]
      this.#set({ told: `What was copied is ${from}; this panel is ${to}` })
    } else this.#place('Paste', pasteAt(this.#chart(), clip, plus(cell, this.#moved())))
  }

  /** Takes away what is selected, or the bead under the crosshair. */
  remove(): void {
    this.#stroke('Take away', takeAway(this.#chart(), this.#spans()))
  }

  selectAll(): void {
    const extent = beadExtent(this.#chart().rows)
    if (extent === undefined) return
    const { firstRow, lastRow, minAt, maxAt } = extent
    const moved = this.#moved()
    const selection = {
      from: minus({ row: firstRow, at: minAt }, moved),
      to: minus({ row: lastRow, at: maxAt }, moved),
    }
    this.#set({ selection, tool: 'select', told: 'Everything is selected' })
  }

  /** Mirrors or turns what is selected within its own box. */
  mirrorSelected(way: 'left-right' | 'top-bottom' | 'both'): void {
    const { selection } = this.#state
    if (selection === undefined) this.#set({ told: 'Nothing is selected' })
    else {
      const edit = mirrorSelection(this.#chart(), this.#toChart(selection), way)
      this.#stroke('Mirror the selection', edit)
    }
  }

  /** Moves what is selected by rows and beads. */
  nudge(rows: number, beads: number): void {
    const { selection } = this.#state
    if (selection === undefined) return
    const by = { row: rows, at: 2 * beads }
    const placed = moveSelection(this.#chart(), this.#toChart(selection), by)
    if (placed !== undefined) this.#place('Move the selection', placed)
  }

  #toFirstBead(): void {
    const first = this.#chart().rows.findIndex(({ cells }) => cells.some((cell) => cell !== 0))
    const here = first < 0 ? NOTHING : rowEnd(this.#chart(), { row: first, at: 0 }, 'first')
    const cell = minus(snapped(this.#chart(), here), this.#moved())
    this.#set({ cell, wantedAt: cell.at })
  }

  #go(to: CellRef, wantedAt: number): void {
    const moved = this.#moved()
    const cell = minus(snapped(this.#chart(), plus(to, moved)), moved)
    if (this.#busy !== undefined) this.to([cell])
    this.#set({ cell, wantedAt, told: '' })
  }

  #point(cell: CellRef): void {
    if (sameCell(cell, this.#state.cell) && this.#busy === undefined) return
    this.#set({ cell, wantedAt: cell.at, told: '' })
  }

  #pick(cell: CellRef): void {
    const slot = slotAt(this.#chart(), cell)
    if (slot < 0) this.#set({ told: 'There is no bead here' })
    else this.#set({ slot, told: `Slot ${slotLabel(slot)}` })
  }

  #fill(cell: CellRef): void {
    const { slot, mirror } = this.#state
    const edit = fillFrom(this.#chart(), cell, { slot, mirror })
    if (edit === undefined) this.#set({ told: 'Fill works on beads and on holes between them' })
    else this.#stroke(`Fill with ${slotLabel(slot)}`, edit)
  }

  #replace(from: number): void {
    const to = this.#state.slot
    if (from < 0) this.#set({ told: 'There is no bead here' })
    else {
      const label = `Replace ${slotLabel(from)} by ${slotLabel(to)}`
      this.#stroke(label, replaceSlot(this.#chart(), { from, to }))
    }
  }

  #place(label: string, { edit, box }: Placed): void {
    const moved = plus(this.#moved(), edit.shift)
    const selection = { from: minus(box.from, moved), to: minus(box.to, moved) }
    this.#stroke(label, edit)
    this.#set({ selection })
  }

  #stroke(label: string, edit: ChartEdit): void {
    const { partId } = this.#state
    if (partId === undefined) return
    if (edit.inverse.splices.length === 0) {
      this.#set({ told: 'Nothing changed' })
      return
    }
    this.#host.stroke(label, partId, edit)
    const isEmpty = beadExtent(edit.chart.rows) === undefined
    this.#set({ told: isEmpty ? 'No bead is left in this panel. Undo brings them back.' : label })
  }

  #strokeLabel(): string {
    const { tool, slot } = this.#state
    const letter = slotLabel(slot)
    switch (tool) {
      case 'erase':
        return 'Take away'
      case 'paint':
        return `Paint ${letter}`
      default:
        return `${tools.find(({ name }) => name === tool)?.label ?? ''} in ${letter}`
    }
  }

  #spans() {
    const { selection, cell } = this.#state
    const { from, to } = this.#toChart(selection ?? { from: cell, to: cell })
    return rectangleSpans(this.#chart(), { from, to })
  }

  #toChart({ from, to }: Stroke): Stroke {
    const moved = this.#moved()
    return { from: plus(from, moved), to: plus(to, moved) }
  }

  #panel(): Panel | undefined {
    return this.#host
      .view()
      .body.parts.find((part): part is Panel => part.id === this.#state.partId)
  }

  #chart(): Chart {
    const panel = this.#panel()
    return panel === undefined ? EMPTY : sharedChart(panel.chart)
  }

  #moved(): CellRef {
    return this.#host.view().moved.get(this.#state.partId ?? '') ?? NOTHING
  }

  #set(part: Partial<State>): void {
    this.#state = { ...this.#state, ...part }
    this.#view = undefined
    for (const listener of this.#listeners) listener()
  }

  #look(): TableView {
    const { tool, slot, mirror, cell, selection, clip, told } = this.#state
    const busy = this.#busy
    const live =
      busy?.kind === 'draw'
        ? { chart: busy.live.chart, moved: busy.live.moved }
        : busy?.kind === 'move' && busy.placed !== undefined
          ? { chart: busy.placed.edit.chart, moved: busy.placed.edit.shift }
          : undefined
    return {
      panel: this.#panel(),
      chart: live?.chart ?? this.#chart(),
      moved: live === undefined ? this.#moved() : plus(this.#moved(), live.moved),
      isDrawing: busy !== undefined,
      ...{ tool, slot, mirror, cell, selection, told },
      hasClip: clip !== undefined,
    }
  }
}
