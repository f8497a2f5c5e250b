import { priceSheet } from '../../../shared-core/pricing/price-sheet.ts'
import { latestMaking, readPriceInputs } from '../price-inputs.ts'
import { getColourwayOf } from '../store/design-rows.ts'
import { getRow } from '../store/find-row.ts'
import type { ActHandler, QueryHandler } from './handler.ts'

export const readPriceSheet: QueryHandler<'prices.sheet'> = async (reading, input) => {
  await getColourwayOf(reading, input)
  const making = await latestMaking(reading, input.colourwayId)
  const [inputs] = await readPriceInputs(reading, [making])
  if (inputs === undefined) throw new Error('expected the inputs of one price')
  return { inputs, sheet: priceSheet(inputs) }
}

export const setPrice: ActHandler<'prices.set'> = async (act, input) => {
  const { design, colourway } = await getColourwayOf(act, input)
  const channel = await getRow(act.trx, 'channel', input.channelId, 'channelId')
  const row = await act.trx
    .selectFrom('set_price')
    .selectAll()
    .where('colourway_id', '=', colourway.id)
    .where('channel_id', '=', channel.id)
    .where('removed_by', 'is', null)
    .executeTakeFirst()
  if (row !== undefined) {
    await act.update('set_price', row.id, { price_minor: input.priceMinor })
  } else if (input.priceMinor !== null) {
    await act.insert('set_price', {
      id: act.newId('pri'),
      design_id: design.id,
      colourway_id: colourway.id,
      channel_id: channel.id,
      price_minor: input.priceMinor,
    })
  }
  const verb =
    input.priceMinor === null ? 'Went back to the suggested price of' : 'Set the price of'
  return { value: {}, label: `${verb} ${design.name} in ${channel.name}` }
}
