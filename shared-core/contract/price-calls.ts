import { z } from 'zod'
import { act, query } from './call.ts'
import * as s from './schemas.ts'
import { channel, workshop } from './workshop-calls.ts'

/** One thing a unit costs before labour: so much of a material at so much a quantity. */
const materialCost = z.strictObject({
  key: z.string(),
  label: z.string(),
  group: z.enum(['materials', 'thread', 'findings', 'packaging']),
  unit: s.unit,
  quantity: s.quantity,
  basis: s.basis,
  /** `costMinor` buys `costQuantity`: exact, by the workshop's costing method. Null when no cost is known. */
  cost: z
    .strictObject({ costMinor: s.priceMinor, costQuantity: z.number().int().min(1) })
    .nullable(),
})

/** All that a price is computed from; the window computes it with the same core while figures are typed. */
export const priceInputs = z.strictObject({
  designName: z.string(),
  unitName: z.string(),
  materials: z.array(materialCost),
  labourS: s.spread,
  workshop,
  channels: z.array(channel),
  /** Prices set by the maker, by channel id. */
  setPrices: z.record(z.string(), s.priceMinor),
})

export const costLine = z.strictObject({
  key: z.string(),
  label: z.string(),
  group: z.enum(['materials', 'thread', 'findings', 'labour', 'overhead', 'packaging']),
  amountMinor: s.amountMinor,
  basis: s.basis,
  /** False where no cost is known; then the amount is 0 and the sheet says so. */
  known: z.boolean(),
})

export const channelPrice = z.strictObject({
  channelId: s.id,
  channelName: z.string(),
  /** Price that leaves the wanted margin, rounded up to the maker's step; null with a refusal when none does. */
  suggestedMinor: s.priceMinor.nullable(),
  refusal: s.refusal.nullable(),
  /** The maker's own price, else the suggested one, else the floor, else 0. */
  priceMinor: s.priceMinor,
  /** Lowest price that loses no money; null when fees take all of any price. */
  floorMinor: s.priceMinor.nullable(),
  taxMinor: s.amountMinor,
  feesMinor: s.amountMinor,
  costMinor: s.amountMinor,
  profitMinor: s.amountMinor,
  /** Of the net price, percent, one decimal, as text. */
  marginPercent: z.string(),
  /** Profit and labour of one unit per hour at the bench. */
  earningsPerHourMinor: s.amountMinor.nullable(),
})

export const priceSheet = z.strictObject({
  cost: z.array(costLine),
  costMinor: s.amountMinor,
  basis: s.basis,
  channels: z.array(channelPrice),
})

export const priceCalls = {
  'prices.sheet': query({
    summary: 'What one unit of a design costs and what it should sell for in each channel.',
    input: z.strictObject({ designId: s.id, colourwayId: s.id }),
    output: z.strictObject({ inputs: priceInputs, sheet: priceSheet }),
    reads: ['prices', 'workshop', 'designs', 'stock'],
  }),
  'prices.set': act({
    summary:
      'Sets the maker’s own price of a design in a channel, or with null goes back to the suggested one.',
    input: z.strictObject({
      designId: s.id,
      colourwayId: s.id,
      channelId: s.id,
      priceMinor: s.priceMinor.nullable(),
    }),
    output: s.nothing,
    changes: ['prices'],
  }),
} as const
