import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import {
  addFractions,
  compareFractions,
  fraction,
  multiplyFractions,
  subtractFractions,
} from '../units/fraction.ts'
import { RATIO_ZERO, type Ratio, ratioToFraction } from '../units/ratio.ts'
import { ceilFraction } from '../units/rounding.ts'
import type { Channel } from './channel.ts'
import { type ExactPrice, exactPrice, type Need } from './exact-price.ts'
import { assertPieceCost, type PieceCost } from './piece-cost.ts'

/**
 * What the maker wants of a price: a margin (profit / price before tax), a mark-up (profit / cost)
 * or a wage (all she keeps for her labour and as profit, per hour at the bench).
 */
export type PriceTarget =
  | Readonly<{ kind: 'margin'; margin: Ratio }>
  | Readonly<{ kind: 'markup'; markup: Ratio }>
  | Readonly<{ kind: 'wage'; minorPerHour: number }>

/**
 * The unrounded price that meets the target exactly.
 *
 * Refusals: `no-such-price`, `bad-target` (a margin or mark-up below 0, a margin of 100 % or more,
 * a wage below 0), `no-bench-time` (a wage without hours).
 */
export function exactPriceForTarget(
  cost: PieceCost,
  channel: Channel,
  target: PriceTarget,
): Result<ExactPrice, Refusal> {
  assertPieceCost(cost, channel.currency)
  const need = needOf(cost, target)
  return need.ok ? exactPrice(channel, need.value) : need
}

/**
 * The price in whole minor units that meets the target: the exact price rounded up.
 *
 * Because tax and fees are themselves rounded to whole minor units, what is left can differ from
 * the target by up to two of them; `priceAt` shows what it comes to.
 * Refusals: those of `exactPriceForTarget`.
 */
export function priceForTarget(
  cost: PieceCost,
  channel: Channel,
  target: PriceTarget,
): Result<number, Refusal> {
  const exact = exactPriceForTarget(cost, channel, target)
  return exact.ok ? ok(ceilFraction(exact.value.priceMinor)) : exact
}

/** `priceForTarget` for a margin on the price before tax, 0 to under 1. */
export function priceForMargin(
  cost: PieceCost,
  channel: Channel,
  margin: Ratio,
): Result<number, Refusal> {
  return priceForTarget(cost, channel, { kind: 'margin', margin })
}

/** `priceForTarget` for earnings per hour at the bench, in minor units. */
export function priceForWage(
  cost: PieceCost,
  channel: Channel,
  minorPerHour: number,
): Result<number, Refusal> {
  return priceForTarget(cost, channel, { kind: 'wage', minorPerHour })
}

function needOf(cost: PieceCost, target: PriceTarget): Result<Need, Refusal> {
  const whole = fraction(cost.costMinor)
  switch (target.kind) {
    case 'margin':
      return isMargin(target.margin)
        ? ok({ fixedMinor: whole, shareOfNet: target.margin })
        : err(badTarget('A margin lies from 0 % to under 100 %.'))
    case 'markup': {
      const markup = ratioToFraction(target.markup)
      if (markup.numerator < 0n) return err(badTarget('A mark-up is 0 % or more.'))
      const fixedMinor = multiplyFractions(whole, addFractions(fraction(1), markup))
      return ok({ fixedMinor, shareOfNet: RATIO_ZERO })
    }
    case 'wage':
      return needOfWage(cost, target.minorPerHour)
  }
}

/** The wage takes the place of the labour in the cost: cost - labour + wage x hours. */
function needOfWage(cost: PieceCost, minorPerHour: number): Result<Need, Refusal> {
  if (!Number.isSafeInteger(minorPerHour) || minorPerHour < 0) {
    return err(badTarget('A wage is a whole amount from zero up.'))
  }
  if (cost.benchSeconds === 0) return err(NO_BENCH_TIME)
  const wage = multiplyFractions(fraction(minorPerHour), fraction(cost.benchSeconds, 3600))
  const rest = subtractFractions(fraction(cost.costMinor), fraction(cost.labourMinor))
  return ok({ fixedMinor: addFractions(rest, wage), shareOfNet: RATIO_ZERO })
}

function isMargin(margin: Ratio): boolean {
  const exact = ratioToFraction(margin)
  return exact.numerator >= 0n && compareFractions(exact, fraction(1)) < 0
}

const NO_BENCH_TIME: Refusal = {
  code: 'no-bench-time',
  message: 'There is no bench time on this piece, so no wage can be worked out.',
  next: 'Give the piece its minutes, or price it by margin.',
}

function badTarget(next: string): Refusal {
  return { code: 'bad-target', message: 'The wanted target is out of range.', next }
}
