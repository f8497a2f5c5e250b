import { measured, type Spread } from '../units/spread.ts'
import type { BeadFamily, BeadForm } from './bead-form.ts'
import { roundingOf, roundingSd, Z95 } from './counting-error.ts'
import { netMg, readingsOf, type Weighing } from './weighing.ts'

/**
 * What turns grams into beads and back: `beadsPerGram` with its 95 % range, `cv` the bead-to-bead
 * sd over mean mass.
 */
export type Calibration = Readonly<{ beadsPerGram: Spread; cv: number }>

/** A calibration from weighings, with the beads behind it. */
export type PooledCalibration = Calibration &
  Readonly<{
    beads: number
    weighings: number
    /** Some sample may sit on a half digit: count more beads, or use a finer scale. */
    halfDigit: boolean
    /** The weighings differ more than beads and scale explain: lots may differ, or one is wrong. */
    disagree: boolean
  }>

/** Bead-to-bead sd over mean mass, by family; general trade knowledge on the careful side. */
const FAMILY_CV: Readonly<Record<BeadFamily, number>> = {
  cylinder: 0.04,
  rocaille: 0.08,
  bugle: 0.1,
  drop: 0.06,
  'two-hole': 0.05,
  cube: 0.06,
  faceted: 0.03,
}

/** Bead-to-bead sd over mean mass to reckon with for a form. */
export function beadCv(form: BeadForm): number {
  return FAMILY_CV[form.family]
}

/** The calibration a form has before anything was weighed: the table's. */
export function tableCalibration(form: BeadForm): Calibration {
  return { beadsPerGram: form.beadsPerGram, cv: beadCv(form) }
}

/**
 * One calibration from all weighings kept, each checked by `checkWeighing` before.
 *
 * Mean mass is total net over total beads. Its variance is that of the beads, c^2 m^2 n, plus each
 * weighing's rounding; roundings that may sit on a half digit add up instead of averaging out. When
 * the weighings differ more than that explains, the range is widened by the Birge ratio.
 *
 * @returns beads per gram `measured` with its 95 % range, or `undefined` without weighings.
 * @source Counting by weight, `countRelativeSd`; R. T. Birge, Physical Review 40 (1932), for the ratio.
 */
export function poolWeighings(
  weighings: readonly Weighing[],
  cv: number,
): PooledCalibration | undefined {
  const beads = weighings.reduce((sum, weighing) => sum + weighing.beads, 0)
  const net = weighings.reduce((sum, weighing) => sum + netMg(weighing), 0)
  if (beads === 0 || net <= 0) return undefined
  const beadMg = net / beads
  const errors = weighings.map((weighing) => errorOf(weighing, beadMg, cv))
  const birge = birgeRatio(weighings, errors, beadMg)
  const relativeSd = (Math.sqrt(totalVariance(errors)) / net) * Math.max(1, birge)
  // A wide error must not turn the bead's mass to nothing.
  const reach = Math.min(0.9, Z95 * relativeSd)
  const perGram = 1000 / beadMg
  return {
    beadsPerGram: measured(perGram / (1 + reach), perGram, perGram / (1 - reach)),
    cv,
    beads,
    weighings: weighings.length,
    halfDigit: errors.some(({ smeared }) => !smeared),
    disagree: birge > DISAGREEMENT,
  }
}

/** A Birge ratio that two or more honest weighings pass about once in fifty times. */
const DISAGREEMENT = 2.3

type WeighingError = Readonly<{ beadVariance: number; scaleSd: number; smeared: boolean }>

function errorOf(weighing: Weighing, beadMg: number, cv: number): WeighingError {
  const { beads, digitMg } = weighing
  const rounding = roundingOf({ beads, beadMg, cv, digitMg })
  return {
    beadVariance: beads * (cv * beadMg) ** 2,
    scaleSd: roundingSd(digitMg, rounding) * Math.sqrt(readingsOf(weighing)),
    smeared: rounding === 'uniform',
  }
}

function totalVariance(errors: readonly WeighingError[]): number {
  const sum = (amounts: readonly number[]) => amounts.reduce((total, amount) => total + amount, 0)
  const smeared = errors.filter((error) => error.smeared)
  const stuck = errors.filter((error) => !error.smeared)
  return (
    sum(errors.map(({ beadVariance }) => beadVariance)) +
    sum(smeared.map(({ scaleSd }) => scaleSd ** 2)) +
    sum(stuck.map(({ scaleSd }) => scaleSd)) ** 2
  )
}

/** sqrt(chi^2 / (k - 1)) of k weighings about their common mean; 0 for a single one. */
function birgeRatio(
  weighings: readonly Weighing[],
  errors: readonly WeighingError[],
  beadMg: number,
): number {
  if (weighings.length < 2) return 0
  const chiSquared = weighings.reduce((sum, weighing, index) => {
    const error = errors[index]
    const variance = error === undefined ? 0 : error.beadVariance + error.scaleSd ** 2
    const residual = netMg(weighing) - weighing.beads * beadMg
    return variance === 0 ? sum : sum + residual ** 2 / variance
  }, 0)
  return Math.sqrt(chiSquared / (weighings.length - 1))
}

/** The best calibration there is: the workshop's own weighings, else the form's table figure. */
export function bestCalibration(form: BeadForm, weighings: readonly Weighing[]): Calibration {
  return poolWeighings(weighings, beadCv(form)) ?? tableCalibration(form)
}
