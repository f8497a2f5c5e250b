import type { Refusal } from '../../refusal.ts'
import { err, ok, type Result } from '../../result.ts'
import { slotLabel } from '../chart.ts'

/** How strand lengths run along the row: longest in the middle, alike, growing to the right, longest at the ends. */
export type FringeGrade = 'point' | 'even' | 'slant' | 'hollow'

/** Every grade, in the order they are offered. */
export const FRINGE_GRADES: readonly FringeGrade[] = ['point', 'even', 'slant', 'hollow']

/** A fringe to make: a strand from every bead of a row. Lengths in beads, the tip's counted. */
export type FringeOrder = Readonly<{
  /** Beads of the row the strands hang from, from the left. */
  places: number
  shortest: number
  longest: number
  grade: FringeGrade
  /** Beads at the end of each strand in `tipSlot`; the last of them turns the thread. */
  tip: number
  slot?: number
  tipSlot?: number
}>

/** Strands alike side by side: from the row's bead `bead` (0-based from the left) on, `copies` of them. */
export type FringeStrands = Readonly<{ bead: number; copies: number; beads: string }>

/** Strands a fringe may have. */
export const MAX_FRINGE_PLACES = 400

/** Beads a strand of a fringe may have. */
export const MAX_FRINGE_BEADS = 1_000

/**
 * The lengths of a fringe's strands in beads, from the left.
 *
 * Between shortest and longest they change evenly, rounded to whole beads; `point` and `hollow` are alike
 * on both sides. Both ends of the range are reached wherever the row has room for them.
 */
export function fringeLengths({
  places,
  shortest,
  longest,
  grade,
}: FringeOrder): readonly number[] {
  const middle = Math.floor((places - 1) / 2)
  const share = (place: number): number => {
    // Counted from the nearer end, so that both sides come out alike to the bead.
    const inwards = middle === 0 ? 1 : Math.min(place, places - 1 - place) / middle
    if (grade === 'point') return inwards
    if (grade === 'hollow') return 1 - inwards
    return grade === 'slant' && places > 1 ? place / (places - 1) : 1
  }
  return Array.from({ length: places }, (_, place) =>
    Math.round(shortest + (longest - shortest) * share(place)),
  )
}

/**
 * A fringe as strands to hang from one row; neighbours of one length are copies of one strand.
 *
 * @returns The strands from the left; or `fringe-size` when there are no places or no beads, the
 *   shortest is longer than the longest, or a limit is passed.
 */
export function fringeFan(order: FringeOrder): Result<readonly FringeStrands[], Refusal> {
  if (!isPossible(order)) return err(wrongFringe())
  const strands: FringeStrands[] = []
  fringeLengths(order).forEach((length, bead) => {
    const beads = strandRuns(length, order)
    const last = strands.at(-1)
    if (last?.beads === beads) strands[strands.length - 1] = { ...last, copies: last.copies + 1 }
    else strands.push({ bead, copies: 1, beads })
  })
  return ok(strands)
}

function strandRuns(length: number, { tip, slot = 0, tipSlot = slot }: FringeOrder): string {
  const end = Math.min(tip, length)
  if (end === 0 || tipSlot === slot) return `${length}${slotLabel(slot)}`
  const body = length > end ? `${length - end}${slotLabel(slot)} ` : ''
  return `${body}${end}${slotLabel(tipSlot)}`
}

function isPossible({ places, shortest, longest, tip }: FringeOrder): boolean {
  const isWhole = [places, shortest, longest, tip].every(Number.isSafeInteger)
  const isPlaced = places >= 1 && places <= MAX_FRINGE_PLACES
  return (
    isWhole &&
    isPlaced &&
    shortest >= 1 &&
    longest >= shortest &&
    tip >= 0 &&
    longest <= MAX_FRINGE_BEADS
  )
}

function wrongFringe(): Refusal {
  return {
    code: 'fringe-size',
    message: 'A fringe of this size cannot be hung.',
    next: `Give a row of 1 to ${MAX_FRINGE_PLACES} beads, and strands of 1 to ${MAX_FRINGE_BEADS} beads, the shortest no longer than the longest.`,
    field: 'longest',
  }
}
