import { type CellRef, type Chart, slotAt, slotLabel } from '../../../../shared-core/chart/chart.ts'
import type { Stroke } from '../../../../shared-core/chart/edits/draw-line.ts'
import type { SlotBead } from '../page/slot-beads.ts'

/** Where a chart's columns are counted from: its leftmost place, in half beads. */
export function leftmost({ rows }: Chart): number {
  return rows.reduce(
    (left, { start, cells }) => (cells.length === 0 ? left : Math.min(left, start)),
    Number.POSITIVE_INFINITY,
  )
}

/** One cell in words: `Row 4, column 7, slot B, oyster shell`. */
export function tellCell(chart: Chart, cell: CellRef, beads: readonly SlotBead[]): string {
  return `${placeWords(chart, cell)}, ${beadWords(chart, cell, beads)}`
}

function placeWords(chart: Chart, { row, at }: CellRef): string {
  const left = leftmost(chart)
  const column = Number.isFinite(left) ? Math.floor((at - left) / 2) + 1 : Math.floor(at / 2) + 1
  const across = column < 1 ? `${1 - column} left of the first column` : `column ${column}`
  const { length } = chart.rows
  if (row < 0) return `${counted(-row, 'row')} above the first, ${across}`
  if (row >= length && length > 0) {
    return `${counted(row - length + 1, 'row')} below the last, ${across}`
  }
  return `Row ${row + 1}, ${across}`
}

const counted = (count: number, word: string) => `${count} ${word}${count === 1 ? '' : 's'}`

function beadWords(chart: Chart, cell: CellRef, beads: readonly SlotBead[]): string {
  const slot = slotAt(chart, cell)
  return slot < 0 ? 'no bead' : `slot ${slotWords(slot, beads)}`
}

/** A slot in words: `B, oyster shell`. */
export function slotWords(slot: number, beads: readonly SlotBead[]): string {
  const bead = beads[slot]
  const name = bead?.material?.name ?? bead?.slot.name ?? ''
  return [slotLabel(slot), name].filter((word) => word !== '').join(', ')
}

/** What is selected, in words: `3 rows selected, 5 beads across`. */
export function selectionWords(selection: Stroke | undefined): string {
  if (selection === undefined) return 'Nothing is selected'
  const { from, to } = selection
  const rows = Math.abs(to.row - from.row) + 1
  const across = Math.floor(Math.abs(to.at - from.at) / 2) + 1
  return `${counted(rows, 'row')} selected, ${counted(across, 'bead')} across`
}
