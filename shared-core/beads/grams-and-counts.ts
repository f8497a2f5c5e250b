import type { Refusal } from '../refusal.ts'
import { ok, type Result } from '../result.ts'
import { type Spread, weakerBasis } from '../units/spread.ts'
import type { Calibration } from './calibration.ts'
import { roundingOf, roundingSd, Z95 } from './counting-error.ts'
import { checkLotWeighing, type LotWeighing, netMg, readingsOf } from './weighing.ts'

// 98 / 0.98 is 100.00000000000001 in binary: a need of exactly 100 must not become 101.
const ROUNDING = 1e-9

const floor = (value: number) => Math.floor(value + ROUNDING)
// Adding 0 turns -0 into 0, so that equal amounts compare equal.
const ceil = (value: number) => Math.ceil(value - ROUNDING) + 0

/** Relative reach below and above, calibration and independent errors joined in quadrature. */
function reach({ beadsPerGram: { value, low, high } }: Calibration, independent: number) {
  return {
    lighter: Math.hypot(1 - value / high, independent),
    heavier: Math.hypot(value / low - 1, independent),
    fewer: Math.hypot(1 - low / value, independent),
    more: Math.hypot(high / value - 1, independent),
  }
}

/** 95 % reach of the common mass of n beads through their own spread, relative. */
function beadsReach(cv: number, beads: number): number {
  return beads > 0 ? (Z95 * cv) / Math.sqrt(beads) : 0
}

/**
 * What a counted number of beads weighs, in whole mg.
 *
 * @param count - Whole beads, 0 or more.
 * @returns `value` rounded to the nearest mg, `low` down and `high` up; the range joins the
 *   calibration's with the beads' own spread; basis of the calibration.
 * @throws RangeError for a count that is not whole or below 0: a bug in the caller.
 */
export function massOfCount(count: number, calibration: Calibration): Spread {
  wholeCount('massOfCount', count)
  const mg = (count * 1000) / calibration.beadsPerGram.value
  const { lighter, heavier } = reach(calibration, beadsReach(calibration.cv, count))
  return {
    value: Math.round(mg),
    low: Math.max(0, floor(mg * (1 - lighter))),
    high: ceil(mg * (1 + heavier)),
    basis: calibration.beadsPerGram.basis,
  }
}

function countWithin(mg: number, calibration: Calibration, scaleSdMg: number): Spread {
  const beads = (mg * calibration.beadsPerGram.value) / 1000
  const scale = mg > 0 ? (Z95 * scaleSdMg) / mg : 0
  const { fewer, more } = reach(calibration, Math.hypot(beadsReach(calibration.cv, beads), scale))
  return {
    value: Math.round(beads),
    low: Math.max(0, floor(beads * (1 - fewer))),
    high: ceil(beads * (1 + more)),
    basis: calibration.beadsPerGram.basis,
  }
}

/**
 * How many beads a known mass is, in whole beads.
 *
 * @param massMg - mg, 0 or more; taken as exact. Use `countOfWeighing` for a reading of a scale.
 * @returns `value` rounded to the nearest bead, `low` down and `high` up (95 %).
 */
export function countOfMass(massMg: number, calibration: Calibration): Spread {
  if (!(massMg >= 0)) throw new RangeError(`countOfMass: expected a mass, got ${massMg}`)
  return countWithin(massMg, calibration, 0)
}

/**
 * How many beads lie in a tube or dish, from its gross weight and tare.
 *
 * The range (95 %) joins calibration, bead-to-bead spread and the scale's rounding of each reading.
 *
 * @returns whole beads, or the refusals of `checkLotWeighing`.
 */
export function countOfWeighing(
  weighing: LotWeighing,
  calibration: Calibration,
): Result<Spread, Refusal> {
  const checked = checkLotWeighing(weighing)
  if (!checked.ok) return checked
  const net = netMg(weighing)
  const beadMg = 1000 / calibration.beadsPerGram.value
  const { digitMg } = weighing
  const rounding = roundingOf({ beads: net / beadMg, beadMg, cv: calibration.cv, digitMg })
  const scaleSd = roundingSd(digitMg, rounding) * Math.sqrt(readingsOf(weighing))
  const count = countWithin(net, calibration, scaleSd)
  // A tube that reads empty may still hold what the scale cannot show.
  const unseen = net === 0 ? ceil((Z95 * scaleSd) / beadMg) : 0
  return ok({ ...count, high: Math.max(count.high, unseen) })
}

/** Beads to have at hand so that `count` good ones remain: count / (1 - cull) / (1 - spare), rounded up. */
export function beadsToHave(count: number, cullRate: number, spareRate = 0): number {
  wholeCount('beadsToHave', count)
  for (const rate of [cullRate, spareRate]) {
    if (!(rate >= 0 && rate < 1)) throw new RangeError(`beadsToHave: expected a share, got ${rate}`)
  }
  return ceil(count / (1 - cullRate) / (1 - spareRate))
}

/**
 * What must be at hand, in whole mg, to have `count` good beads after the culls (and a spare share).
 *
 * Beads are rounded up first, then their mass; `low` goes with the lowest cull rate and the
 * lightest beads, `high` with the highest and heaviest.
 *
 * @returns whole mg, every bound rounded up; basis the weaker of calibration and cull rate.
 */
export function needMass(
  count: number,
  calibration: Calibration,
  cullRate: Spread,
  spareRate = 0,
): Spread {
  const beads = {
    value: beadsToHave(count, cullRate.value, spareRate),
    low: beadsToHave(count, cullRate.low, spareRate),
    high: beadsToHave(count, cullRate.high, spareRate),
  }
  const mgEach = 1000 / calibration.beadsPerGram.value
  const { lighter, heavier } = reach(calibration, beadsReach(calibration.cv, beads.value))
  return {
    value: ceil(beads.value * mgEach),
    low: ceil(Math.max(0, beads.low * mgEach * (1 - lighter))),
    high: ceil(beads.high * mgEach * (1 + heavier)),
    basis: weakerBasis(calibration.beadsPerGram.basis, cullRate.basis),
  }
}

function wholeCount(name: string, count: number): void {
  if (Number.isSafeInteger(count) && count >= 0) return
  throw new RangeError(`${name}: expected whole beads, got ${count}`)
}
