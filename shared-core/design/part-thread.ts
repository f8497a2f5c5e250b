import type { BeadForm } from '../beads/bead-form.ts'
import type { Thread } from '../beads/thread.ts'
import type { ThreadLength } from '../route/length-ledger.ts'
import type { ThreadMeasure } from '../route/measure-thread.ts'
import { type Spread, weakerBasis } from '../units/spread.ts'
import type { ThreadReading } from './reading.ts'

/**
 * A thread length with its range, mm.
 *
 * The errors of bead length, bead diameter, thread diameter and slack are independent, so their
 * reaches are joined in quadrature, each by its share of the length.
 *
 * @param inPieceMm - The length, slack and finishing included.
 */
export function threadSpread(
  inPieceMm: number,
  measure: ThreadMeasure,
  { form, thread, slack }: Readonly<{ form: BeadForm; thread: Thread; slack: Spread }>,
): Spread {
  const total = measure.throughMm + measure.runMm + measure.bendMm
  const share = (mm: number) => (total > 0 ? mm / total : 0)
  const reach = (side: 'low' | 'high') =>
    Math.hypot(
      share(measure.throughMm) * relative(form.lengthMm, side),
      share(measure.runMm) * relative(form.diameterMm, side),
      share(measure.bendMm) * relative(thread.diameterMm, side),
      relative(slack, side),
    )
  return {
    value: Math.round(inPieceMm),
    low: Math.floor(inPieceMm * (1 - Math.min(1, reach('low')))),
    high: Math.ceil(inPieceMm * (1 + reach('high'))),
    basis: weakerBasis(slack.basis, form.lengthMm.basis),
  }
}

function relative(spread: Spread, side: 'low' | 'high'): number {
  return spread.value > 0 ? Math.abs(spread[side] - spread.value) / spread.value : 0
}

/**
 * The thread of some lengths, of which so much stays in the piece: whole mm a length, and the range
 * of what stays for what leaves the spool.
 */
export function threadOf(lengths: readonly ThreadLength[], inPieceMm: Spread): ThreadReading {
  const cutMm = lengths.map((length) => length.cutMm)
  const inWorkMm = lengths.map((length) => Math.round(length.inPieceMm))
  return { inPieceMm, cutMm, inWorkMm, spoolMm: spoolSpread(cutMm, inPieceMm) }
}

/** The thread that leaves the spool for given cuts, with the range of what stays in the piece. */
export function spoolSpread(cutMm: readonly number[], inPiece: Spread): Spread {
  const value = cutMm.reduce((sum, mm) => sum + mm, 0)
  return {
    value,
    low: Math.max(0, value - (inPiece.value - inPiece.low)),
    high: value + (inPiece.high - inPiece.value),
    basis: inPiece.basis,
  }
}
