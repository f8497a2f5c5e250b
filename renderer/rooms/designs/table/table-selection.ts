import { beadExtent } from '../../../../shared-core/chart/bead-extent.ts'
import { copyCells } from '../../../../shared-core/chart/edits/clip.ts'
import { rectangleSpans } from '../../../../shared-core/chart/edits/draw-rectangle.ts'
import { stitchName } from '../../../../shared-core/chart/stitch-name.ts'
import { refusalWords } from '../../../ui/refusal-words.ts'
import { minus, plus } from './cells.ts'
import { mirrorSelection, moveSelection, pasteAt, takeAway } from './selection-edits.ts'
import type { TableAct } from './table-acts.ts'
import { TableBase } from './table-base.ts'
import { clipFor, type KeptClip } from './table-clip.ts'

/** What is done to the selection or, where nothing is selected, to the cell under the crosshair. */
export abstract class TableSelection extends TableBase {
  /** Does an act on the selection, or on the crosshair's row and column. */
  act(act: TableAct): void {
    this.settle()
    const { cell, selection } = this.state
    const box = this.toChart(selection ?? { from: cell, to: cell })
    const done = act.do(this.chart(), { ...box, slot: this.slot() })
    if (!done.ok) this.set({ told: refusalWords(done.error) })
    else this.draw(act.label, done.value)
  }

  copy(): boolean {
    this.settle()
    const clip = copyCells(this.chart(), this.#spans())
    if (clip === undefined) {
      this.set({ told: 'There is no bead to copy here' })
      return false
    }
    const { palette } = this.host.view().body
    this.host.clipBoard.kept = { clip, palette, home: this.host }
    this.set({ told: 'Copied' })
    return true
  }

  cut(): void {
    if (this.copy()) this.draw('Cut', takeAway(this.chart(), this.#spans()))
  }

  paste(): void {
    this.settle()
    const { kept } = this.host.clipBoard
    const { stitch } = this.chart()
    if (kept === undefined) this.set({ told: 'Nothing has been copied yet' })
    else if (kept.clip.stitch !== stitch) {
      const [from, to] = [stitchName(kept.clip.stitch), stitchName(stitch)]
      this.set({ told: `What was copied is ${from}; this panel is ${to}` })
    } else {
      const { clip, palette } = this.#here(kept)
      const placed = pasteAt(this.chart(), clip, plus(this.state.cell, this.moved()))
      this.put('Paste', placed, palette)
    }
  }

  /** What was copied in the slots of this design, and its palette with those it had none of. */
  #here(kept: KeptClip): ReturnType<typeof clipFor> {
    const { palette } = this.host.view().body
    return kept.home === this.host ? { clip: kept.clip, palette } : clipFor(kept, palette)
  }

  /** Takes away what is selected, or the bead under the crosshair. */
  remove(): void {
    this.settle()
    this.draw('Take away', takeAway(this.chart(), this.#spans()))
  }

  selectAll(): void {
    this.settle()
    const extent = beadExtent(this.chart().rows)
    if (extent === undefined) {
      this.set({ told: 'There is no bead to select' })
      return
    }
    const { firstRow, lastRow, minAt, maxAt } = extent
    const moved = this.moved()
    const selection = {
      from: minus({ row: firstRow, at: minAt }, moved),
      to: minus({ row: lastRow, at: maxAt }, moved),
    }
    this.set({ selection, tool: 'select', told: 'Everything is selected' })
  }

  /** Mirrors or turns what is selected within its own box. */
  mirrorSelected(way: 'left-right' | 'top-bottom' | 'both'): void {
    this.settle()
    const { selection } = this.state
    if (selection === undefined) this.set({ told: 'Nothing is selected' })
    else {
      const edit = mirrorSelection(this.chart(), this.toChart(selection), way)
      this.draw('Mirror the selection', edit)
    }
  }

  /** Moves what is selected by rows and beads. */
  nudge(rows: number, beads: number): void {
    this.settle()
    const { selection } = this.state
    if (selection === undefined) return
    const by = { row: rows, at: 2 * beads }
    const placed = moveSelection(this.chart(), this.toChart(selection), by)
    if (placed !== undefined) this.put('Move the selection', placed)
  }

  #spans() {
    const { selection, cell } = this.state
    return rectangleSpans(this.chart(), this.toChart(selection ?? { from: cell, to: cell }))
  }
}
