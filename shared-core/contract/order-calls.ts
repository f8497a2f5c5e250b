import { z } from 'zod'
import { act, query } from './call.ts'
import * as s from './schemas.ts'

const lineInput = z.strictObject({
  id: s.id.optional(),
  designId: s.id,
  colourwayId: s.id,
  units: s.units,
  /** Agreed price of one unit; null until agreed. */
  priceMinor: s.priceMinor.nullable(),
})

export const orderInput = z.strictObject({
  /** A business or an order number; the studio keeps no private persons' data it does not need. */
  customer: s.name,
  dueOn: s.date,
  promisedOn: s.date,
  note: s.note,
  lines: z.array(lineInput).min(1, 'expected at least one line').max(200),
})

const orderLine = lineInput.extend({
  id: s.id,
  versionId: s.id,
  designName: z.string(),
  colourwayName: z.string(),
  unitName: z.string(),
  /** Units already made for this line. */
  made: z.number().int(),
})

export const order = z.strictObject({
  id: s.id,
  code: z.string(),
  customer: z.string(),
  promisedOn: s.date,
  dueOn: s.date,
  note: z.string(),
  state: z.enum(['open', 'ready', 'closed', 'cancelled']),
  lines: z.array(orderLine),
  totalMinor: s.amountMinor,
})

/** What stock does for one line of an order beside what earlier promises hold. Quantities in the material's unit. */
export const lineCover = z.strictObject({
  lineId: s.id,
  designName: z.string(),
  unitName: z.string(),
  /** Units still to make. */
  units: z.number().int(),
  coveredUnits: z.number().int(),
  /** What limits, most binding first. */
  limits: z.array(
    z.strictObject({
      key: z.string(),
      materialId: s.id.nullable(),
      name: z.string(),
      unit: s.unit,
      perUnit: s.quantity,
      onHand: s.signedQuantity,
      /** Held by promises before this one. */
      heldByOthers: s.quantity,
      enoughFor: z.number().int(),
    }),
  ),
  shortages: z.array(
    z.strictObject({
      materialId: s.id.nullable(),
      key: z.string(),
      name: z.string(),
      unit: s.unit,
      short: s.quantity,
      /** Cheapest way through the packs known; null when no supplier's pack is known. */
      packs: z
        .array(
          z.strictObject({
            supplier: z.string(),
            packQuantity: z.number().int(),
            packs: z.number().int(),
            costMinor: s.priceMinor,
            leadDays: z.number().int(),
          }),
        )
        .nullable(),
      costMinor: s.priceMinor.nullable(),
    }),
  ),
  proof: z.enum(['exact', 'bounded']),
})

export const orderCover = z.strictObject({
  lines: z.array(lineCover),
  covered: z.boolean(),
  /** Cost of everything short; null when a pack price is missing. */
  costMinor: s.priceMinor.nullable(),
  /** Earliest day everything short could be here by its suppliers' lead times; null when unknown or nothing is short. */
  hereOn: s.date.nullable(),
})

export const orderCalls = {
  'orders.list': query({
    summary: 'Orders with their lines, soonest due first.',
    input: z.strictObject({ state: z.enum(['open', 'all']) }),
    output: z.strictObject({ orders: z.array(order) }),
    reads: ['orders', 'designs', 'makes'],
  }),
  'orders.read': query({
    summary: 'One order.',
    input: z.strictObject({ id: s.id }),
    output: z.strictObject({ order }),
    reads: ['orders', 'designs', 'makes'],
  }),
  'orders.save': act({
    summary:
      'Enters an order (without id) or saves one; a new order reserves what it needs from that moment.',
    input: z.strictObject({ id: s.id.optional(), order: orderInput }),
    output: z.strictObject({ id: s.id, code: z.string() }),
    changes: ['orders', 'stock'],
  }),
  'orders.setState': act({
    summary: 'Closes, cancels or reopens an order; only open orders hold stock.',
    input: z.strictObject({ id: s.id, state: z.enum(['open', 'closed', 'cancelled']) }),
    output: s.nothing,
    changes: ['orders', 'stock'],
  }),
  'orders.cover': query({
    summary:
      'Whether stock covers an order, saved or only drafted, beside what other open orders hold.',
    input: z.strictObject({
      today: s.date,
      order: z.union([
        z.strictObject({ id: s.id }),
        z.strictObject({ draft: orderInput, id: s.id.optional() }),
      ]),
    }),
    output: orderCover,
    reads: ['orders', 'stock', 'designs', 'makes'],
  }),
  'orders.coverAll': query({
    summary: 'Cover of all open orders in order of promise.',
    input: z.strictObject({ today: s.date }),
    output: z.strictObject({
      orders: z.array(z.strictObject({ orderId: s.id, code: z.string(), cover: orderCover })),
    }),
    reads: ['orders', 'stock', 'designs', 'makes'],
  }),
} as const
