import { beadExtent } from '../../../../shared-core/chart/bead-extent.ts'
import type { CellRef, Chart } from '../../../../shared-core/chart/chart.ts'
import type { ChartEdit } from '../../../../shared-core/chart/edits/chart-edit.ts'
import type { Stroke } from '../../../../shared-core/chart/edits/draw-line.ts'
import { sharedChart } from '../../../../shared-core/chart/shared-rows.ts'
import type { DesignBody, Panel } from '../../../../shared-core/design/design.ts'
import { changesNothing, minus, plus, rowEnd, snapped } from './cells.ts'
import type { Placed } from './selection-edits.ts'
import type { TableBusy, TableHost, TableState, TableView } from './table-state.ts'

const NOTHING: CellRef = { row: 0, at: 0 }
const EMPTY: Chart = { stitch: 'square', rows: [] }

/** What lies on the table and what is chosen there; how a finished edit becomes a stroke. */
export abstract class TableBase {
  protected readonly host: TableHost
  protected busy: TableBusy | undefined
  protected state: TableState
  readonly #listeners = new Set<() => void>()
  #view: TableView | undefined

  constructor(host: TableHost) {
    this.host = host
    this.state = {
      partId: undefined,
      tool: 'paint',
      slot: 0,
      mirror: 'none',
      cell: NOTHING,
      wantedAt: 0,
      selection: undefined,
      told: '',
    }
    this.toFirstBead()
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
  readonly refresh = (): void => {
    // Undo may come while a stroke is drawn; that rests on the drawing as it was.
    const { busy } = this
    if (busy !== undefined && busy.kind !== 'select' && busy.on !== this.panel()?.chart) {
      this.busy = undefined
      this.set({ told: 'Left off' })
    } else this.set({})
  }

  /** Ends what is being drawn, so that whatever comes next is done to what is seen. */
  protected abstract settle(): void

  tell(told: string): void {
    this.set({ told })
  }

  protected set(part: Partial<TableState>): void {
    this.state = { ...this.state, ...part }
    this.#view = undefined
    for (const listener of this.#listeners) listener()
  }

  /** The panel that is drawn on: the chosen one, or the first where that is gone. */
  protected panel(): Panel | undefined {
    const panels = this.host.view().body.parts.filter((part) => part.kind === 'panel')
    return panels.find(({ id }) => id === this.state.partId) ?? panels[0]
  }

  protected chart(): Chart {
    const panel = this.panel()
    return panel === undefined ? EMPTY : sharedChart(panel.chart)
  }

  /** How far the chart's cells lie from the table's. */
  protected moved(): CellRef {
    return this.host.view().moved.get(this.panel()?.id ?? '') ?? NOTHING
  }

  /** The chosen slot, or the last where that is gone; -1 where there is none to draw with. */
  protected slot(): number {
    return Math.min(this.state.slot, this.host.view().body.palette.length - 1)
  }

  protected toChart({ from, to }: Stroke): Stroke {
    const moved = this.moved()
    return { from: plus(from, moved), to: plus(to, moved) }
  }

  protected toFirstBead(): void {
    const chart = this.chart()
    const first = chart.rows.findIndex(({ cells }) => cells.some((cell) => cell !== 0))
    const here = first < 0 ? NOTHING : rowEnd(chart, { row: first, at: 0 }, 'first')
    const cell = minus(snapped(chart, here), this.moved())
    this.set({ cell, wantedAt: cell.at })
  }

  /** Hands an edit over as a stroke and says what it did. */
  protected draw(label: string, edit: ChartEdit, palette?: DesignBody['palette']): void {
    const panel = this.panel()
    if (panel === undefined) return
    if (changesNothing(edit)) {
      this.set({ told: 'Nothing changed' })
      return
    }
    this.host.stroke(label, panel.id, edit, palette)
    const isEmpty = beadExtent(edit.chart.rows) === undefined
    this.set({ told: isEmpty ? 'No bead is left in this panel. Undo brings them back.' : label })
  }

  /** Draws beads that were put somewhere, with the slots they bring, and selects them there. */
  protected put(label: string, { edit, box }: Placed, palette?: DesignBody['palette']): void {
    const moved = plus(this.moved(), edit.shift)
    const selection = { from: minus(box.from, moved), to: minus(box.to, moved) }
    this.draw(label, edit, palette)
    this.set({ selection })
  }

  #look(): TableView {
    const { tool, mirror, cell, selection, told } = this.state
    const live = this.#live()
    return {
      panel: this.panel(),
      chart: live?.chart ?? this.chart(),
      moved: live === undefined ? this.moved() : plus(this.moved(), live.moved),
      isDrawing: this.busy !== undefined,
      slot: Math.max(0, this.slot()),
      ...{ tool, mirror, cell, selection, told },
      hasClip: this.host.clipBoard.kept !== undefined,
    }
  }

  #live(): Readonly<{ chart: Chart; moved: CellRef }> | undefined {
    const { busy } = this
    if (busy?.kind === 'draw') return busy.live
    if (busy?.kind !== 'move' || busy.placed === undefined) return undefined
    const { chart, shift } = busy.placed.edit
    return { chart, moved: shift }
  }
}
