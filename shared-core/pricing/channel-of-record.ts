import type { z } from 'zod'
import type { channel } from '../contract/workshop-calls.ts'
import type { CurrencyCode } from '../units/currency.ts'
import { ratioFromPercent } from '../units/ratio.ts'
import { type Channel, type FeeBase, plainChannel } from './channel.ts'

/** A channel as the contract carries it: percentages as text, one base for both fees. */
export type ChannelRecord = z.infer<typeof channel>

/** The channel of a record, in the workshop's currency. */
export function channelOfRecord(record: ChannelRecord, currency: CurrencyCode): Channel {
  const base: FeeBase = record.feesOn === 'net' ? 'price-before-tax' : 'price-with-tax'
  return {
    ...plainChannel(record.kind, currency),
    fee: { percent: ratioFromPercent(record.feePercent), fixedMinor: record.feeFixedMinor, base },
    payment: {
      percent: ratioFromPercent(record.paymentPercent),
      fixedMinor: record.paymentFixedMinor,
      base,
    },
    tax: {
      rate: ratioFromPercent(record.taxPercent),
      mode: record.taxIncluded ? 'included' : 'added',
    },
  }
}
