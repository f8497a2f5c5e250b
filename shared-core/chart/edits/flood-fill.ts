import type { CellRef, Chart, ChartRow } from '../chart.ts'
import { neighbourSteps } from '../neighbours.ts'
import { type ChartEdit, editTo, noEdit } from './chart-edit.ts'

/**
 * Fills the patch of one slot round a cell with another slot, or with slot -1 takes its beads away.
 *
 * The patch spreads to the cells that touch in the stitch (`neighbourSteps`). Blanks within rows can be
 * filled too; the space outside the rows cannot. Each cell is filled once, so it always ends.
 */
export function floodFill(chart: Chart, from: CellRef, slot: number): ChartEdit {
  const filling = new Filling(chart, slot + 1)
  const old = filling.cellAt(from.row, from.at)
  if (old === undefined || old === slot + 1) return noEdit(chart)
  filling.fill(from, old)
  return editTo(chart, { stitch: chart.stitch, rows: filling.rows() })
}

class Filling {
  readonly #chart: Chart
  readonly #cell: number
  readonly #changed = new Map<number, ChartRow>()

  constructor(chart: Chart, cell: number) {
    this.#chart = chart
    this.#cell = cell
  }

  /** The cell at a position, or `undefined` outside the rows and between positions. */
  cellAt(row: number, at: number): number | undefined {
    const line = this.#row(row)
    return line === undefined ? undefined : line.cells[(at - line.start) / 2]
  }

  fill(from: CellRef, old: number): void {
    const rows = [from.row]
    const positions = [from.at]
    this.#set(from.row, from.at)
    for (let row = rows.pop(); row !== undefined; row = rows.pop()) {
      const at = positions.pop() ?? 0
      for (const [down, across] of neighbourSteps(this.#chart.stitch, row, at)) {
        if (this.cellAt(row + down, at + across) !== old) continue
        this.#set(row + down, at + across)
        rows.push(row + down)
        positions.push(at + across)
      }
    }
  }

  rows(): readonly ChartRow[] {
    const rows = this.#chart.rows.slice()
    for (const [number, row] of this.#changed) rows[number] = row
    return rows
  }

  #row(row: number): ChartRow | undefined {
    return this.#changed.get(row) ?? this.#chart.rows[row]
  }

  #set(row: number, at: number): void {
    let line = this.#changed.get(row)
    if (line === undefined) {
      const { start, cells } = this.#chart.rows[row] as ChartRow
      line = { start, cells: cells.slice() }
      this.#changed.set(row, line)
    }
    line.cells[(at - line.start) / 2] = this.#cell
  }
}
