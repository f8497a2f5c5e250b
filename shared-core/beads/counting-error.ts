/** Two-sided 95 % of a normal distribution, in standard deviations. */
export const Z95 = 1.959963984540054

/** How a scale's rounding is counted: as an even spread over its digit, or at its worst, half a digit. */
export type Rounding = 'uniform' | 'half-digit'

/** Sd of one reading's rounding, in the unit of the digit: digit / sqrt 12, or half the digit. */
export function roundingSd(digitMg: number, rounding: Rounding): number {
  return rounding === 'uniform' ? digitMg / Math.sqrt(12) : digitMg / 2
}

/**
 * Whether the beads' own spread smears a reading over the scale's digits.
 *
 * Where it does not (their common sd is under 0.3 of a digit) a sample can sit on a half digit every
 * time it is weighed; rounding must then be counted as half a digit.
 *
 * @source Rounding of a normal variable is even to within exp(-2 pi^2 (sd/digit)^2) of its amplitude.
 */
export function roundingOf(weighed: Scaled & { readonly beads: number }): Rounding {
  return weighed.beads < smearingBeads(weighed) ? 'half-digit' : 'uniform'
}

type Scaled = Readonly<{ beadMg: number; cv: number; digitMg: number }>

/** The fewest beads whose spread smears a digit, not rounded up; a whole number stays one despite binary fractions. */
function smearingBeads({ beadMg, cv, digitMg }: Scaled): number {
  return ((0.3 * digitMg) / (cv * beadMg)) ** 2 - 1e-9
}

/** A count by weight: `reference` beads were counted and weighed, then a lot of `lot` beads weighed. */
export type CountByWeight = Readonly<{
  /** Bead-to-bead sd over mean mass. */
  cv: number
  reference: number
  lot: number
  digitMg: number
  beadMg: number
  rounding: Rounding
}>

/**
 * Relative standard deviation of a count by weight.
 *
 * sqrt(c^2 (1/n + 1/N) + s^2 (1/n^2 + 1/N^2)), n beads of reference, N in the lot, c the beads' cv,
 * s the rounding's sd in beads.
 *
 * @source Delta method on N = W n / R, the setting of Steiner and MacKay, Scale Counting.
 */
export function countRelativeSd(count: CountByWeight): number {
  const { cv, reference: n, lot: N, digitMg, beadMg, rounding } = count
  const s = roundingSd(digitMg, rounding) / beadMg
  return Math.sqrt(cv ** 2 * (1 / n + 1 / N) + s ** 2 * (1 / n ** 2 + 1 / N ** 2))
}

/** What a maker wants of a calibration: within `accuracy` (0.01 is 1 %) with certainty `z` (1.96: 95 %). */
export type CountingAim = Readonly<{
  cv: number
  accuracy: number
  digitMg: number
  beadMg: number
  z?: number
}>

/**
 * How many beads to count and weigh for a wanted accuracy, as an exact number.
 *
 * n = (c^2 + sqrt(c^4 + 4 (p/z)^2 s^2)) / (2 (p/z)^2); a perfect scale leaves (z c / p)^2.
 *
 * @source The same derivation as `countRelativeSd`, for a lot much larger than the reference.
 */
export function exactBeadsToCount({ cv, accuracy, digitMg, beadMg, z = Z95 }: CountingAim): number {
  const s = roundingSd(digitMg, 'uniform') / beadMg
  const q = (accuracy / z) ** 2
  return (cv ** 2 + Math.sqrt(cv ** 4 + 4 * q * s ** 2)) / (2 * q)
}

/**
 * How many beads to count and weigh for a wanted accuracy: whole beads, at least 1.
 *
 * Where that many beads would not smear the scale's digits, rounding is taken at its worst instead,
 * which asks for more beads (or ends once their spread does smear them).
 */
export function beadsToCount(aim: CountingAim): number {
  const { cv, accuracy, digitMg, beadMg, z = Z95 } = aim
  const beads = Math.max(1, Math.ceil(exactBeadsToCount(aim) - 1e-9))
  if (roundingOf({ beads, beadMg, cv, digitMg }) === 'uniform') return beads
  // Half a digit is sqrt 3 times the uniform sd.
  const worst = exactBeadsToCount({ cv, accuracy, beadMg, z, digitMg: digitMg * Math.sqrt(3) })
  return Math.max(beads, Math.ceil(Math.min(worst - 1e-9, smearingBeads(aim))))
}
