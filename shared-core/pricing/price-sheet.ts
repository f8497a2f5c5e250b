import type { z } from 'zod'
import type {
  channelPrice,
  priceInputs,
  priceSheet as sheetSchema,
} from '../contract/price-calls.ts'
import { type CostInput, costSheet, type Overhead } from '../costing/cost-sheet.ts'
import type { Refusal } from '../refusal.ts'
import type { Result } from '../result.ts'
import { currencyCode } from '../units/currency.ts'
import { durationS } from '../units/duration.ts'
import { percentOf, type Ratio, ratioFromPercent } from '../units/ratio.ts'
import { roundHalfAway } from '../units/rounding.ts'
import type { Channel } from './channel.ts'
import { type ChannelRecord, channelOfRecord } from './channel-of-record.ts'
import { floorPrice } from './floor-price.ts'
import { type PieceCost, pieceCostOf } from './piece-cost.ts'
import { priceAt } from './price-at.ts'
import { priceForMargin } from './price-for-target.ts'
import { roundToPricePoint } from './price-points.ts'

/** All a price is computed from, as the contract carries it. */
export type PriceInputs = z.infer<typeof priceInputs>
/** What a unit costs and should sell for in each channel, as the contract carries it. */
export type PriceSheet = z.infer<typeof sheetSchema>

type ChannelPrice = z.infer<typeof channelPrice>

/**
 * What one unit costs, and in each channel the suggested price, the floor, and what the price leaves.
 *
 * The suggested price leaves the workshop's margin, rounded up to its price step and never below the
 * floor. A channel that cannot leave it carries the refusal, and its price is the maker's own, else
 * the floor, else 0. Labour of a fraction of a second is rounded.
 */
export function priceSheet(inputs: PriceInputs): PriceSheet {
  const sheet = costSheet(costInputOf(inputs))
  const currency = currencyCode(inputs.workshop.currency)
  const cost = pieceCostOf(sheet, currency)
  return {
    cost: [...sheet.lines],
    costMinor: sheet.costMinor,
    basis: sheet.basis,
    channels: inputs.channels.map((record) => channelPriceOf(inputs, cost, record)),
  }
}

/** The cost input of price inputs. */
export function costInputOf({ materials, labourS, workshop }: PriceInputs): CostInput {
  return {
    materials,
    labour: { seconds: durationS(Math.round(labourS.value)), basis: labourS.basis },
    hourlyRateMinor: workshop.hourlyRateMinor,
    overhead: overheadOf(workshop.overhead),
  }
}

function overheadOf(overhead: PriceInputs['workshop']['overhead']): Overhead {
  return overhead.kind === 'percent-of-labour'
    ? { kind: overhead.kind, percent: ratioFromPercent(overhead.percent) }
    : overhead
}

function channelPriceOf(inputs: PriceInputs, cost: PieceCost, record: ChannelRecord): ChannelPrice {
  const channel = channelOfRecord(record, cost.currency)
  const floor = valueOf(floorPrice(cost, channel))
  const suggested = suggestedPrice(inputs, cost, channel)
  const suggestedMinor = valueOf(suggested)
  const priceMinor = inputs.setPrices[record.id] ?? suggestedMinor ?? floor ?? 0
  const outcome = priceAt(cost, channel, priceMinor)
  return {
    channelId: record.id,
    channelName: record.name,
    suggestedMinor,
    refusal: suggested.ok ? null : suggested.error,
    priceMinor,
    floorMinor: floor,
    taxMinor: outcome.taxMinor,
    feesMinor: outcome.feesMinor,
    costMinor: outcome.costMinor,
    profitMinor: outcome.profitMinor,
    marginPercent: percentText(outcome.margin),
    earningsPerHourMinor: outcome.earningsPerBenchHourMinor,
  }
}

function suggestedPrice(
  { workshop }: PriceInputs,
  cost: PieceCost,
  channel: Channel,
): Result<number, Refusal> {
  const wanted = priceForMargin(cost, channel, ratioFromPercent(workshop.marginPercent))
  if (!wanted.ok) return wanted
  const floor = floorPrice(cost, channel)
  if (!floor.ok) return floor
  return roundToPricePoint(wanted.value, {
    points: { kind: 'every', stepMinor: workshop.priceStepMinor },
    direction: 'up',
    floorMinor: floor.value,
    belowFloor: 'never',
  })
}

function percentText(margin: Ratio | null): string {
  return margin === null ? '0.0' : roundHalfAway(percentOf(margin), 1)
}

function valueOf(price: Result<number, Refusal>): number | null {
  return price.ok ? price.value : null
}
