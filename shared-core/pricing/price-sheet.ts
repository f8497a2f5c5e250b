import type { z } from 'zod'
import type {
  channelPrice,
  priceInputs,
  priceSheet as sheetShape,
} from '../contract/price-calls.ts'
import type { channel as channelShape } from '../contract/workshop-calls.ts'
import { type CostSheet, costSheet, type Overhead } from '../costing/cost-sheet.ts'
import type { Refusal } from '../refusal.ts'
import type { Result } from '../result.ts'
import { type CurrencyCode, currencyCode } from '../units/currency.ts'
import { durationS } from '../units/duration.ts'
import { percentOf, RATIO_ZERO, ratioFromPercent } from '../units/ratio.ts'
import { roundDecimal } from '../units/rounding.ts'
import { type Channel, checkChannel, NO_SHIPPING } from './channel.ts'
import { floorPrice } from './floor-price.ts'
import { type PieceCost, pieceCostOf } from './piece-cost.ts'
import { priceAt } from './price-at.ts'
import { priceForMargin } from './price-for-target.ts'
import { roundToPricePoint } from './price-points.ts'

/** All that a price is computed from, as the store sends it. */
export type PriceInputs = z.output<typeof priceInputs>
/** The cost of a unit, and its price in every channel. */
export type PriceSheet = z.output<typeof sheetShape>
/** A channel as the maker sets it up. */
export type ChannelSettings = z.output<typeof channelShape>
type ChannelPrice = z.output<typeof channelPrice>

/**
 * The cost sheet of one unit and what it sells for in each channel.
 *
 * Cost by `costSheet`. In each channel: the floor that loses no money; the price that leaves the
 * workshop's margin, rounded up to its price step; the maker's own price where she has set one; and
 * what that price leaves. Where no price leaves the margin the suggestion is null and says why.
 *
 * @param inputs labour in seconds (rounded to whole ones), amounts in minor units of the currency
 * @returns minor units; the cost lines sum exactly to `costMinor`
 */
export function priceSheet(inputs: PriceInputs): PriceSheet {
  const cost = costOf(inputs)
  const piece = pieceCostOf(cost, currencyCode(inputs.workshop.currency))
  return {
    cost: cost.lines.map((line) => ({ ...line })),
    costMinor: cost.costMinor,
    basis: cost.basis,
    channels: inputs.channels.map((channel) => priceIn(channel, piece, inputs)),
  }
}

/** A channel as prices are reckoned in it: no shipping, fees on the price with or without its tax. */
export function saleChannel(settings: ChannelSettings, currency: CurrencyCode): Channel {
  const base = settings.feesOn === 'net' ? 'price-before-tax' : 'price-with-tax'
  return {
    kind: settings.kind,
    currency,
    fee: {
      percent: ratioFromPercent(settings.feePercent),
      fixedMinor: settings.feeFixedMinor,
      base,
    },
    payment: {
      percent: ratioFromPercent(settings.paymentPercent),
      fixedMinor: settings.paymentFixedMinor,
      base,
    },
    commissionShare: RATIO_ZERO,
    tax: {
      rate: ratioFromPercent(settings.taxPercent),
      mode: settings.taxIncluded ? 'included' : 'added',
    },
    shipping: NO_SHIPPING,
  }
}

/** The workshop's share of overhead as the cost sheet takes it. */
export function overheadOf(overhead: PriceInputs['workshop']['overhead']): Overhead {
  return overhead.kind === 'percent-of-labour'
    ? { kind: overhead.kind, percent: ratioFromPercent(overhead.percent) }
    : overhead
}

function costOf({ materials, labourS, workshop }: PriceInputs): CostSheet {
  return costSheet({
    materials,
    labour: { seconds: durationS(Math.round(labourS.value)), basis: labourS.basis },
    hourlyRateMinor: workshop.hourlyRateMinor,
    overhead: overheadOf(workshop.overhead),
  })
}

function priceIn(
  settings: ChannelSettings,
  cost: PieceCost,
  { workshop, setPrices }: PriceInputs,
): ChannelPrice {
  const channel = saleChannel(settings, cost.currency)
  const possible = checkChannel(channel)
  const floor = possible.ok ? floorPrice(cost, channel) : possible
  const suggested = floor.ok ? suggestedPrice(cost, channel, floor.value, workshop) : floor
  const suggestedMinor = suggested.ok ? suggested.value : null
  const floorMinor = floor.ok ? floor.value : null
  const priceMinor = setPrices[settings.id] ?? suggestedMinor ?? floorMinor ?? 0
  const outcome = priceAt(cost, channel, priceMinor)
  return {
    channelId: settings.id,
    channelName: settings.name,
    suggestedMinor,
    refusal: suggested.ok ? null : suggested.error,
    priceMinor,
    floorMinor,
    taxMinor: outcome.taxMinor,
    feesMinor: outcome.feesMinor,
    costMinor: outcome.costMinor,
    profitMinor: outcome.profitMinor,
    marginPercent: roundDecimal(percentOf(outcome.margin ?? RATIO_ZERO), 1, 'half-even'),
    earningsPerHourMinor: outcome.earningsPerBenchHourMinor,
  }
}

function suggestedPrice(
  cost: PieceCost,
  channel: Channel,
  floorMinor: number,
  workshop: PriceInputs['workshop'],
): Result<number, Refusal> {
  const exact = priceForMargin(cost, channel, ratioFromPercent(workshop.marginPercent))
  if (!exact.ok) return exact
  return roundToPricePoint(exact.value, {
    points: { kind: 'every', stepMinor: workshop.priceStepMinor },
    direction: 'up',
    floorMinor,
    belowFloor: 'never',
  })
}
