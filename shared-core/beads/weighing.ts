import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import type { MassMg } from '../units/mass.ts'
import type { DecimalMark } from '../units/parse-options.ts'
import { withMark } from '../units/with-mark.ts'
import type { BeadForm } from './bead-form.ts'

/**
 * Counted beads on a scale: how many, gross and tare in mg, and the scale's digit in mg (10 for a
 * scale that shows 0.01 g). A tare of 0 means the scale was zeroed with the dish on it.
 */
export type Weighing = Readonly<{
  beads: number
  grossMg: MassMg
  tareMg: MassMg
  digitMg: number
}>

/** A dish or tube on a scale, its beads not counted. */
export type LotWeighing = Omit<Weighing, 'beads'>

/** The net mass in mg. */
export function netMg({ grossMg, tareMg }: LotWeighing): number {
  return grossMg - tareMg
}

/** Readings behind a net mass: gross and tare, or gross alone on a zeroed scale. */
export function readingsOf({ tareMg }: LotWeighing): 1 | 2 {
  return tareMg === 0 ? 1 : 2
}

/**
 * Checks a weighing of a tube or dish.
 *
 * @returns the weighing, or `weighing-tare-over-gross` or `weighing-digit`.
 */
export function checkLotWeighing<W extends LotWeighing>(
  weighing: W,
  decimal?: DecimalMark,
): Result<W, Refusal> {
  const { grossMg, tareMg, digitMg } = weighing
  if (grossMg < tareMg || tareMg < 0) {
    return err({
      code: 'weighing-tare-over-gross',
      field: 'tareMg',
      message: `The tare of ${tareMg} mg is not below the gross weight of ${grossMg} mg.`,
      next: 'Weigh the empty tube or dish again and enter the weight with its beads as gross.',
    })
  }
  if (!(digitMg >= 0 && digitMg <= 10_000)) {
    return err({
      code: 'weighing-digit',
      field: 'digitMg',
      message: `A scale digit of ${digitMg} mg cannot be used.`,
      next: withMark('Enter the smallest step the scale shows, such as 0.01 g.', decimal),
    })
  }
  return ok(weighing)
}

/** How far beyond the table's own range a bead may weigh before its weighing is doubted. */
const DOUBT = 1.5

/**
 * Checks a weighing of counted beads before it is kept.
 *
 * @returns the weighing, or a refusal: `weighing-no-beads`, `weighing-no-weight`,
 *   `weighing-implausible` (half as light or heavy again as the form's range allows: a slip of the
 *   decimal, a forgotten tare or another bead), or those of `checkLotWeighing`.
 */
export function checkWeighing(
  weighing: Weighing,
  form: BeadForm,
  decimal?: DecimalMark,
): Result<Weighing, Refusal> {
  const lot = checkLotWeighing(weighing, decimal)
  if (!lot.ok) return lot
  const { beads } = weighing
  if (!Number.isSafeInteger(beads) || beads < 1) {
    return err({
      code: 'weighing-no-beads',
      field: 'beads',
      message: `A count of ${beads} beads cannot be used.`,
      next: 'Count whole beads, 100 or more for an ordinary scale, and weigh them together.',
    })
  }
  const net = netMg(weighing)
  if (net === 0) {
    return err({
      code: 'weighing-no-weight',
      field: 'grossMg',
      message: 'The beads weigh nothing on this scale.',
      next: 'Weigh more beads at once, or use a finer scale.',
    })
  }
  return plausible(weighing, form, { perGram: (beads * 1000) / net, decimal })
}

function plausible(
  weighing: Weighing,
  form: BeadForm,
  { perGram, decimal }: Readonly<{ perGram: number; decimal: DecimalMark | undefined }>,
): Result<Weighing, Refusal> {
  const { low, high } = form.beadsPerGram
  // A few beads on a coarse scale may look light or heavy through its digit alone.
  const slack = 1 + (readingsOf(weighing) * weighing.digitMg) / 2 / netMg(weighing)
  if (perGram >= low / DOUBT / slack && perGram <= high * DOUBT * slack) return ok(weighing)
  return err({
    code: 'weighing-implausible',
    field: 'grossMg',
    message: `${withMark(`${perGram.toFixed(1)} beads per gram is far from the ${low} to ${high} usual`, decimal)} for ${form.name}.`,
    next: 'Check the count, the tare and the decimal mark, or give the bead a form of its own.',
  })
}
