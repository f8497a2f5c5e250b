import { estimated, type Spread } from '../units/spread.ts'
import { learnRatio } from './learn-ratio.ts'
import type { ThreadReading } from './reading.ts'

/** Thread of one session, mm: what was used (cut less what was left over), and what the route reckons stays in the work. */
export type ThreadCount = Readonly<{ usedMm: number; reckonedMm: number }>

/** The share that hands differ by, either way: what the slack of a stitch does not know of this maker. */
const HANDS = 0.08

/** Thread used over thread reckoned before anything is known of this workshop: 1, known to 8 %. */
export const referenceThreadUse: Spread = estimated(1 - HANDS, 1, 1 + HANDS)

/**
 * Thread this workshop uses over what the route reckons, from what was left over.
 *
 * Sessions are compared in logarithms, centred robustly and drawn towards 1 (see `learnRatio`).
 * Sessions of a quarter less or more than reckoned are slips of a ruler or of a scrap bin, not of the
 * hand, and are left out.
 */
export function learnThreadUse(counts: readonly ThreadCount[]): Spread {
  const ratios = counts
    .filter(({ usedMm, reckonedMm }) => usedMm > 0 && reckonedMm > 0)
    .map(({ usedMm, reckonedMm }) => Math.log(usedMm / reckonedMm))
    .filter((ratio) => Math.abs(ratio) < Math.log(1.25))
  return learnRatio(referenceThreadUse, ratios, 0)
}

/**
 * One length to cut as this workshop uses thread, whole mm: what of it stays in the work is more or
 * less, its ends are as long as ever. As it was where nothing has been learnt.
 *
 * @param cutMm - As the route reckons it.
 * @param inWorkMm - What of it stays in the work, as the route reckons it.
 */
export function cutAsUsed(cutMm: number, inWorkMm: number, use: Spread): number {
  return use.basis === 'estimated' ? cutMm : Math.round(cutMm + (use.value - 1) * inWorkMm)
}

/**
 * A reading's thread as this workshop uses it, whole mm.
 *
 * What stays in the piece is more or less by the workshop's use; each length to cut is longer or
 * shorter by its own share of that (see `cutAsUsed`). The range of hands gives way to the range
 * learnt. As it was where nothing has been learnt.
 */
export function threadAsUsed(thread: ThreadReading, use: Spread): ThreadReading {
  if (use.basis === 'estimated') return thread
  const { inPieceMm: piece, inWorkMm } = thread
  const cutMm = thread.cutMm.map((mm, at) => cutAsUsed(mm, inWorkMm[at] ?? 0, use))
  const inPieceMm = ranged(piece.value * use.value, piece, use)
  const value = cutMm.reduce((sum, mm) => sum + mm, 0)
  const spoolMm = {
    value,
    low: Math.max(0, value - (inPieceMm.value - inPieceMm.low)),
    high: value + (inPieceMm.high - inPieceMm.value),
    basis: inPieceMm.basis,
  }
  return {
    inPieceMm,
    cutMm,
    inWorkMm: inWorkMm.map((mm) => Math.round(mm * use.value)),
    spoolMm,
  }
}

function ranged(mm: number, piece: Spread, use: Spread): Spread {
  const value = Math.round(mm)
  const below = reach(piece.value - piece.low, piece.value, use.value - use.low)
  const above = reach(piece.high - piece.value, piece.value, use.high - use.value)
  return {
    value,
    low: Math.min(value, Math.max(0, Math.floor(mm * (1 - below)))),
    high: Math.max(value, Math.ceil(mm * (1 + above))),
    basis: piece.basis === 'exact' ? 'exact' : 'measured',
  }
}

/** Relative reach without the hands' share, with the learnt one in its place. */
function reach(off: number, value: number, learnt: number): number {
  const all = value > 0 ? off / value : 0
  return Math.hypot(Math.sqrt(Math.max(0, all ** 2 - HANDS ** 2)), learnt)
}
