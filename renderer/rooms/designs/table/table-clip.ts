import { slotLabel } from '../../../../shared-core/chart/chart.ts'
import type { Clip } from '../../../../shared-core/chart/edits/clip.ts'
import type { DesignBody, PaletteSlot } from '../../../../shared-core/design/design.ts'
import { MOST_SLOTS } from './palette-edits.ts'
import type { TableHost } from './table-state.ts'

type Palette = DesignBody['palette']

/** What was copied: the beads, and how their slots looked where they lay. */
export type KeptClip = Readonly<{ clip: Clip; palette: Palette; home: TableHost }>

/** What was copied last, on any table. */
export type ClipBoard = { kept: KeptClip | undefined }

/**
 * Copied beads in the slots of another palette: each slot becomes the one that looks the same there, and
 * where there is none a new one at the palette's end. A full palette takes them by their letters.
 */
export function clipFor(
  { clip, palette: from }: KeptClip,
  palette: Palette,
): Readonly<{ clip: Clip; palette: Palette }> {
  const slots = [...palette]
  const cellOf = new Map<number, number>()
  for (const { cell } of clip.runs) {
    const slot = from[cell - 1]
    if (slot === undefined || cellOf.has(cell)) continue
    cellOf.set(cell, 1 + slotFor(slots, slot, cell - 1))
  }
  const runs = clip.runs.map((run) => ({ ...run, cell: cellOf.get(run.cell) ?? run.cell }))
  const isSame = slots.length === palette.length
  return { clip: { ...clip, runs }, palette: isSame ? palette : slots }
}

function slotFor(slots: PaletteSlot[], slot: PaletteSlot, before: number): number {
  const looksSame = (other: PaletteSlot | undefined) =>
    other?.formId === slot.formId &&
    other.colourHex === slot.colourHex &&
    other.finish === slot.finish
  if (looksSame(slots[before])) return before
  const same = slots.findIndex(looksSame)
  if (same >= 0) return same
  if (slots.length >= MOST_SLOTS) return Math.min(before, slots.length - 1)
  slots.push({ ...slot, label: slotLabel(slots.length) })
  return slots.length - 1
}
