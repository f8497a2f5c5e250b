import { refuse } from '../refused.ts'
import type { View } from '../store/view.ts'
import type { QueryHandler } from './handler.ts'

export const readTakings: QueryHandler<'takings.read'> = async (reading, { from, to }) => {
  if (to < from) {
    refuse('days-reversed', `${to} is before ${from}.`, 'Give the earlier day first.', 'to')
  }
  const channels = await takingsByChannel(reading, { from, to })
  return {
    channels,
    priceMinor: channels.reduce((sum, one) => sum + one.priceMinor, 0),
    profitMinor: channels.reduce((sum, one) => sum + one.profitMinor, 0),
  }
}

/** Sales less returns between two days, both included, by channel. */
export async function takingsByChannel(
  { trx }: View,
  { from, to }: Readonly<{ from: string; to: string }>,
) {
  const rows = await trx
    .selectFrom('sale')
    .innerJoin('channel', 'channel.id', 'sale.channel_id')
    .select(({ fn }) => [
      'channel.id',
      'channel.name',
      'channel.position',
      fn.sum<number>('sale.units').as('pieces'),
      fn.sum<number>('sale.price_minor').as('price'),
      fn.sum<number>('sale.tax_minor').as('tax'),
      fn.sum<number>('sale.fees_minor').as('fees'),
      fn.sum<number>('sale.cost_minor').as('cost'),
      fn.sum<number>('sale.profit_minor').as('profit'),
    ])
    .where('sale.sold_on', '>=', from)
    .where('sale.sold_on', '<=', to)
    .groupBy(['channel.id', 'channel.name', 'channel.position'])
    .orderBy('channel.position')
    .execute()
  return rows
    .map((row) => ({
      channelId: row.id,
      name: row.name,
      pieces: Number(row.pieces),
      priceMinor: Number(row.price),
      taxMinor: Number(row.tax),
      feesMinor: Number(row.fees),
      costMinor: Number(row.cost),
      profitMinor: Number(row.profit),
    }))
    .filter((row) => row.pieces !== 0 || row.priceMinor !== 0)
}
