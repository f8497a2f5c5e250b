import { z } from 'zod'
import { query } from './call.ts'
import * as s from './schemas.ts'

/** One thing that needs attention, and where its cure is: a room, and what to open there. */
const attention = z.strictObject({
  kind: z.enum([
    'order-due',
    'order-short',
    'stock-low',
    'stock-unweighed',
    'price-missing',
    'slot-unassigned',
    'piece-unplaced',
  ]),
  text: z.string(),
  detail: z.string(),
  room: z.enum(['designs', 'stock', 'orders', 'bench', 'shelf', 'prices']),
  openId: s.id.nullable(),
  dueOn: s.date.nullable(),
})

export const dayCalls = {
  'today.read': query({
    summary: 'What needs attention now, most pressing first.',
    input: z.strictObject({ today: s.date }),
    output: z.strictObject({
      attention: z.array(attention),
      openOrders: z.number().int(),
      piecesHere: z.number().int(),
      stockValueMinor: s.amountMinor,
      takenThisMonthMinor: s.amountMinor,
    }),
    reads: ['stock', 'orders', 'designs', 'pieces', 'prices', 'workshop', 'makes'],
  }),
  'takings.read': query({
    summary:
      'What was sold between two days, by channel, with sums that reconcile with the pieces and the stock.',
    input: z.strictObject({ from: s.date, to: s.date }),
    output: z.strictObject({
      channels: z.array(
        z.strictObject({
          channelId: s.id,
          name: z.string(),
          pieces: z.number().int(),
          priceMinor: s.amountMinor,
          taxMinor: s.amountMinor,
          feesMinor: s.amountMinor,
          costMinor: s.amountMinor,
          profitMinor: s.amountMinor,
        }),
      ),
      priceMinor: s.amountMinor,
      profitMinor: s.amountMinor,
    }),
    reads: ['pieces', 'workshop'],
  }),
} as const
