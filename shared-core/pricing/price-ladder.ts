import type { Refusal } from '../refusal.ts'
import { ok, type Result } from '../result.ts'
import { addFractions, fraction, multiplyFractions } from '../units/fraction.ts'
import { type Ratio, ratioToFraction } from '../units/ratio.ts'
import { ceilFraction } from '../units/rounding.ts'
import type { Channel } from './channel.ts'
import { floorPrice } from './floor-price.ts'
import type { PieceCost } from './piece-cost.ts'
import { type PriceOutcome, priceAt } from './price-at.ts'
import { type PriceTarget, priceForTarget } from './price-for-target.ts'
import { type PointDirection, type PricePoints, roundToPricePoint } from './price-points.ts'

/** One channel of the ladder, with what is wanted of it. */
export type LadderChannel = Readonly<{
  id: string
  channel: Channel
  target: PriceTarget
  points: PricePoints
}>

/** What the prices of all channels follow from. */
export type LadderInput = Readonly<{
  cost: PieceCost
  channels: readonly LadderChannel[]
  direction: PointDirection
  belowFloor: 'never' | 'allowed'
  /** Retail before tax is at least so many times wholesale before tax; null for no such rule. */
  retailOverWholesale: Ratio | null
  /** Whether every retail channel asks the same price, as shops insist; the highest of them. */
  oneRetailPrice: boolean
}>

/** Why a price stands where it does. */
export type PriceReason = 'target' | 'retail-over-wholesale' | 'one-retail-price'

/** One channel's price and what it leaves. */
export type Rung = Readonly<{
  priceMinor: number
  floorMinor: number
  /** The price that meets the target, before price points. */
  targetPriceMinor: number
  reason: PriceReason
  outcome: PriceOutcome
}>

/** The rung of each channel, or why it has none. */
export type LadderRung = Readonly<{ id: string; rung: Result<Rung, Refusal> }>

/**
 * A price for each channel from one cost: wholesale, consignment, market, web.
 *
 * Each channel gets the price that meets its target, at its price points, not below its floor. With
 * `retailOverWholesale` no retail channel asks less than that multiple of the highest wholesale
 * price before tax; with `oneRetailPrice` all retail channels ask the highest retail price. A
 * channel that cannot meet its target carries its refusal and holds up no other.
 */
export function priceLadder(input: LadderInput): readonly LadderRung[] {
  const own = input.channels.map((entry) => ({
    entry,
    rung: ownRung(input, entry, { leastMinor: 0, reason: 'target' }),
  }))
  const wholesaleNet = highest(
    own.flatMap(({ entry, rung }) =>
      isWholesale(entry) && rung.ok ? [rung.value.outcome.netMinor] : [],
    ),
  )
  const raised = own.map(({ entry, rung }) =>
    isWholesale(entry)
      ? { entry, rung }
      : { entry, rung: overWholesale(input, entry, rung, wholesaleNet) },
  )
  const retail = highest(
    raised.flatMap(({ entry, rung }) =>
      !isWholesale(entry) && rung.ok ? [rung.value.priceMinor] : [],
    ),
  )
  return raised.map(({ entry, rung }) => ({
    id: entry.id,
    rung: input.oneRetailPrice && !isWholesale(entry) ? atLeast(input, entry, rung, retail) : rung,
  }))
}

type Least = Readonly<{ leastMinor: number; reason: PriceReason }>

function ownRung(input: LadderInput, entry: LadderChannel, least: Least): Result<Rung, Refusal> {
  const floor = floorPrice(input.cost, entry.channel)
  if (!floor.ok) return floor
  const wanted = priceForTarget(input.cost, entry.channel, entry.target)
  if (!wanted.ok) return wanted
  const bound = least.leastMinor > wanted.value
  const point = roundToPricePoint(Math.max(wanted.value, least.leastMinor), {
    points: entry.points,
    // A bound from below must not be rounded away again.
    direction: bound ? 'up' : input.direction,
    floorMinor: floor.value,
    belowFloor: input.belowFloor,
  })
  if (!point.ok) return point
  return ok({
    priceMinor: point.value,
    floorMinor: floor.value,
    targetPriceMinor: wanted.value,
    reason: bound ? least.reason : 'target',
    outcome: priceAt(input.cost, entry.channel, point.value),
  })
}

function overWholesale(
  input: LadderInput,
  entry: LadderChannel,
  rung: Result<Rung, Refusal>,
  wholesaleNet: number,
): Result<Rung, Refusal> {
  if (!rung.ok || input.retailOverWholesale === null) return rung
  const net = multiplyFractions(fraction(wholesaleNet), ratioToFraction(input.retailOverWholesale))
  const tax = addFractions(fraction(1), ratioToFraction(entry.channel.tax.rate))
  const shown = entry.channel.tax.mode === 'included' ? multiplyFractions(net, tax) : net
  const leastMinor = ceilFraction(shown)
  return rung.value.priceMinor >= leastMinor
    ? rung
    : ownRung(input, entry, { leastMinor, reason: 'retail-over-wholesale' })
}

/** The one retail price as it stands: it is a price point of the channel it comes from. */
function atLeast(
  input: LadderInput,
  entry: LadderChannel,
  rung: Result<Rung, Refusal>,
  priceMinor: number,
): Result<Rung, Refusal> {
  if (!rung.ok || rung.value.priceMinor >= priceMinor) return rung
  const outcome = priceAt(input.cost, entry.channel, priceMinor)
  return ok({ ...rung.value, priceMinor, reason: 'one-retail-price', outcome })
}

function isWholesale(entry: LadderChannel): boolean {
  return entry.channel.kind === 'wholesale'
}

function highest(values: readonly number[]): number {
  return Math.max(0, ...values)
}
