import type { CellRef, Chart } from '../../../../shared-core/chart/chart.ts'
import { type ChartEdit, editTo } from '../../../../shared-core/chart/edits/chart-edit.ts'
import { lineCells, type Stroke } from '../../../../shared-core/chart/edits/draw-line.ts'
import { rectangleRuns } from '../../../../shared-core/chart/edits/draw-rectangle.ts'
import { mirrorAxes, withMirrored } from '../../../../shared-core/chart/edits/mirror-runs.ts'
import { type CellRun, writeRuns } from '../../../../shared-core/chart/edits/write-runs.ts'
import type { MirrorWay } from './tools.ts'

/** Tools that leave a trace where they are drawn along. */
export type DrawnTool = 'paint' | 'erase' | 'line' | 'box' | 'frame'

type Start = Readonly<{ base: Chart; tool: DrawnTool; slot: number; mirror: MirrorWay }>

/**
 * A stroke while it is drawn: what the chart would be if it ended now. Cells are those of the chart
 * the stroke began on, also where the chart has grown to the left meanwhile.
 */
export class LiveStroke {
  readonly #start: Start
  readonly #axes: ReturnType<typeof mirrorAxes>
  #from: CellRef | undefined
  #last: CellRef | undefined
  #chart: Chart
  #moved: CellRef = { row: 0, at: 0 }

  constructor(start: Start) {
    this.#start = start
    this.#chart = start.base
    this.#axes = start.mirror === 'none' ? undefined : mirrorAxes(start.base)
  }

  get chart(): Chart {
    return this.#chart
  }

  /** How far its cells have come since the stroke began. */
  get moved(): CellRef {
    return this.#moved
  }

  /** Draws on to a cell: without a gap from the cell before, or anew from the first. */
  to(cell: CellRef): void {
    const { tool, base } = this.#start
    const isTrail = tool === 'paint' || tool === 'erase'
    this.#from ??= cell
    const from = isTrail ? (this.#last ?? cell) : this.#from
    this.#last = cell
    if (!isTrail) {
      this.#chart = base
      this.#moved = { row: 0, at: 0 }
    }
    this.#write(this.#runs({ from, to: cell }))
  }

  /** The edit of the chart it began on. */
  edit(): ChartEdit {
    return editTo(this.#start.base, this.#chart, this.#moved)
  }

  #runs(stroke: Stroke): Iterable<CellRun> {
    const { base, tool, slot } = this.#start
    if (tool === 'box' || tool === 'frame') {
      return rectangleRuns(base, { ...stroke, isFilled: tool === 'box' }, slot)
    }
    const cell = tool === 'erase' ? 0 : slot + 1
    return lineCells(base, stroke).map((at) => ({ ...at, count: 1, cell }))
  }

  #write(runs: Iterable<CellRun>): void {
    const { mirror } = this.#start
    const all =
      this.#axes === undefined || mirror === 'none' ? runs : withMirrored(runs, this.#axes, mirror)
    const { row, at } = this.#moved
    const here = [...all].map((run) => ({ ...run, row: run.row + row, at: run.at + at }))
    const edit = writeRuns(this.#chart, here)
    this.#chart = edit.chart
    this.#moved = { row: row + edit.shift.row, at: at + edit.shift.at }
  }
}
