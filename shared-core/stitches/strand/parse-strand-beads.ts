import { slotIndex } from '../../chart/chart.ts'
import type { Refusal } from '../../refusal.ts'
import { err, ok, type Result } from '../../result.ts'
import { quoted } from '../../units/parse-options.ts'
import { MAX_STRAND_BEADS } from './strand-beads.ts'

/** A strand's beads as they are stored, `12A 1B`, and how many they are. */
export type StrandBeads = Readonly<{ beads: string; count: number }>

/**
 * Reads a strand's beads as people type them: `12A 1B`, `12a, 1b`, `12 A + 1 B`, `A B` for one each.
 *
 * Neighbouring runs of one slot become one. Counts are whole, 1 or more.
 *
 * @param slots - How many slots the palette has: A is the first.
 * @returns The runs; or `strand-empty`, `strand-unreadable` with the part that could not be read,
 *   `strand-slot` for a letter the palette has not, `strand-too-long` above `MAX_STRAND_BEADS` beads.
 */
export function parseStrandBeads(text: string, slots: number): Result<StrandBeads, Refusal> {
  const tidy = text.toUpperCase().replace(/[×X](?=\s*[A-Z])/g, ' ')
  const words = tidy.match(/\d+\s*[A-Z]+|[A-Z]+|[^\s,;+]+/g) ?? []
  if (words.length === 0) return err(empty)
  const runs: { count: number; label: string }[] = []
  for (const word of words) {
    const [, number = '1', label = ''] = /^(\d*)\s*([A-Z]{1,4})$/.exec(word) ?? []
    const count = Number(number === '' ? '1' : number)
    if (label === '' || count < 1) return err(unreadable(word))
    const slot = slotIndex(label)
    if (slot === undefined || slot >= slots) return err(unknownSlot(label, slots))
    const last = runs.at(-1)
    if (last?.label === label) last.count += count
    else runs.push({ count, label })
  }
  const count = runs.reduce((sum, run) => sum + run.count, 0)
  if (count > MAX_STRAND_BEADS) return err(tooLong(count))
  return ok({ beads: runs.map((run) => `${run.count}${run.label}`).join(' '), count })
}

const empty: Refusal = {
  code: 'strand-empty',
  message: 'A strand has at least one bead.',
  next: 'Type runs from the panel outwards, such as 12A 1B.',
}

function unreadable(word: string): Refusal {
  return {
    code: 'strand-unreadable',
    message: `${quoted(word)} is not a number of beads and a slot.`,
    next: 'Type runs such as 12A 1B.',
  }
}

function unknownSlot(label: string, slots: number): Refusal {
  const last = slots > 26 ? 'the last' : String.fromCharCode(64 + slots)
  return {
    code: 'strand-slot',
    message: `The palette has no slot ${label}.`,
    next: slots === 1 ? 'Use A, its only slot.' : `Use its slots, A to ${last}.`,
  }
}

function tooLong(count: number): Refusal {
  return {
    code: 'strand-too-long',
    message: `That makes ${count} beads on one strand.`,
    next: `A strand holds up to ${MAX_STRAND_BEADS}: check the numbers, or part it into several.`,
  }
}
