import { z } from 'zod'
import { act, query, step } from './call.ts'
import * as s from './schemas.ts'

/** The workshop's own figures and ways, one row of them. */
export const workshop = z.strictObject({
  name: s.name,
  currency: s.currency,
  /** How this workshop writes numbers; parsers of typed figures take it as their hint. */
  decimalMark: z.enum([',', '.']),
  hourlyRateMinor: s.priceMinor,
  overhead: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('percent-of-labour'), percent: s.percent }),
    z.strictObject({ kind: z.literal('per-hour'), amountMinor: s.priceMinor }),
    z.strictObject({ kind: z.literal('per-piece'), amountMinor: s.priceMinor }),
  ]),
  costingMethod: z.enum(['fifo', 'average']),
  /** Margin wanted on the net price, in percent. */
  marginPercent: s.percent,
  /** Prices are rounded up to a whole multiple of this: 100 is whole euros, 50 is half euros. */
  priceStepMinor: z.number().int().min(1).max(100_000),
  scaleResolutionMg: z.number().int().min(1).max(10_000),
  /** Written on tags: who made it and how to reach her, care, caution. */
  tagMaker: z.string().max(200),
  tagCare: z.string().max(200),
  tagCaution: z.string().max(200),
})

export const channel = z.strictObject({
  id: s.id,
  name: s.name,
  kind: z.enum(['market', 'web', 'consignment', 'wholesale', 'other']),
  /** Kept by the marketplace or the shop, percent of the price. */
  feePercent: s.percent,
  feeFixedMinor: s.priceMinor,
  paymentPercent: s.percent,
  paymentFixedMinor: s.priceMinor,
  /** What the percents are taken on. */
  feesOn: z.enum(['net', 'gross']),
  taxPercent: s.percent,
  /** Whether the price a buyer sees contains the tax. */
  taxIncluded: z.boolean(),
})

export const place = z.strictObject({
  id: s.id,
  name: s.name,
  /** The channel through which pieces standing here are sold, if there is one. */
  channelId: s.id.nullable(),
})

export const supplier = z.strictObject({
  id: s.id,
  name: s.name,
  leadDays: z.number().int().min(0).max(365),
  note: s.note,
})

export const workshopCalls = {
  'workshop.read': query({
    summary:
      'The workshop with its channels, places and suppliers; `workshop` is null before the first choice.',
    input: s.nothing,
    output: z.strictObject({
      workshop: workshop.nullable(),
      channels: z.array(channel),
      places: z.array(place),
      suppliers: z.array(supplier),
    }),
    reads: ['workshop'],
  }),
  'workshop.begin': step({
    summary:
      'Begins a new workshop, empty or with the Saltmarsh sample; refused when there is one already.',
    input: z.strictObject({
      with: z.enum(['sample', 'empty']),
      name: s.name,
      currency: s.currency,
      decimalMark: z.enum([',', '.']),
      today: s.date,
    }),
    output: s.nothing,
    changes: ['workshop', 'stock', 'designs', 'orders', 'prices', 'makes', 'pieces', 'history'],
  }),
  'workshop.save': act({
    summary: 'Saves the workshop’s own figures.',
    input: z.strictObject({ workshop: workshop.omit({ currency: true }) }),
    output: s.nothing,
    changes: ['workshop', 'prices'],
  }),
  'channel.save': act({
    summary: 'Adds a channel (without id) or saves one.',
    input: z.strictObject({ channel: channel.partial({ id: true }) }),
    output: z.strictObject({ id: s.id }),
    changes: ['workshop', 'prices'],
  }),
  'place.save': act({
    summary: 'Adds a place (without id) or saves one.',
    input: z.strictObject({ place: place.partial({ id: true }) }),
    output: z.strictObject({ id: s.id }),
    changes: ['workshop'],
  }),
  'supplier.save': act({
    summary: 'Adds a supplier (without id) or saves one.',
    input: z.strictObject({ supplier: supplier.partial({ id: true }) }),
    output: z.strictObject({ id: s.id }),
    changes: ['workshop', 'stock'],
  }),
} as const
