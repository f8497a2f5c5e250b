import { MAX_SLOTS, slotIndex } from '../../chart/chart.ts'

/** The most beads a strand may have. */
export const MAX_STRAND_BEADS = 100_000

/**
 * A strand's beads as slot indexes, from the panel outwards, from runs such as `12A 1B 3A`.
 *
 * @returns `undefined` for anything but such runs, or for more than `MAX_STRAND_BEADS` beads.
 */
export function readStrandBeads(text: string): Uint16Array | undefined {
  const runs = text.trim() === '' ? [] : text.trim().split(/\s+/)
  const slots: number[] = []
  for (const run of runs) {
    const match = /^([1-9]\d{0,6})([A-Z]{1,4})$/.exec(run)
    const slot = slotIndex(match?.[2] ?? '')
    const count = Number(match?.[1])
    if (match === null || slot === undefined || slot >= MAX_SLOTS) return undefined
    if (slots.length + count > MAX_STRAND_BEADS) return undefined
    for (let bead = 0; bead < count; bead += 1) slots.push(slot)
  }
  return Uint16Array.from(slots)
}
