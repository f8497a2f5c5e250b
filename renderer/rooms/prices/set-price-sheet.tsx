import { useState } from 'react'
import { type PriceInputs, priceSheet } from '../../../shared-core/pricing/price-sheet.ts'
import { parseMoney } from '../../../shared-core/units/parse-money.ts'
import type { Format } from '../../app/format.ts'
import { placeRefusal } from '../../app/place-refusal.ts'
import { useAct } from '../../app/use-act.ts'
import { Button } from '../../ui/button.tsx'
import { FigureList } from '../../ui/figure-list.tsx'
import { FormSheet } from '../../ui/form-sheet.tsx'
import { QuantityInput } from '../../ui/quantity-input.tsx'
import type { ChannelPrice } from './channel-prices.tsx'

/** The maker's own price in a channel; what it leaves follows the typing. */
export function SetPriceSheet({
  channel,
  inputs,
  designId,
  colourwayId,
  format,
  onClose,
}: Readonly<{
  channel: ChannelPrice
  inputs: PriceInputs
  designId: string
  colourwayId: string
  format: Format
  onClose: () => void
}>) {
  const { channelId, channelName } = channel
  const [price, setPrice] = useState<readonly [string, number | undefined]>([
    format.money(channel.priceMinor),
    channel.priceMinor,
  ])
  const set = useAct('prices.set', { said: () => `Set the price at ${channelName}`, of: price })
  const { at, above } = placeRefusal(set.refusal, ['priceMinor'])
  async function keep(priceMinor: number | null) {
    if ((await set.act({ designId, colourwayId, channelId, priceMinor })).ok) onClose()
  }
  const setPrices =
    price[1] === undefined ? inputs.setPrices : { ...inputs.setPrices, [channelId]: price[1] }
  const tried = priceSheet({ ...inputs, setPrices }).channels.find(
    (other) => other.channelId === channelId,
  )
  return (
    <FormSheet
      title={`Price at ${channelName}`}
      above={above}
      label="Set this price"
      isBusy={set.isBusy}
      onSave={() => price[1] !== undefined && void keep(price[1])}
      others={
        <Button kind="quiet" onClick={() => void keep(null)}>
          Follow the margin
        </Button>
      }
      onClose={onClose}
    >
      <QuantityInput
        label="The buyer pays"
        error={at('priceMinor')}
        missing="Say what the buyer pays, or follow the margin."
        unit={format.currency}
        autoFocus
        text={price[0]}
        parse={(text) => parseMoney(text, { currency: format.currency, decimal: format.decimal })}
        onText={(text, value) => setPrice([text, value?.amountMinor])}
      />
      {tried !== undefined && price[1] !== undefined && (
        <FigureList
          figures={[
            { label: 'Leaves', value: format.money(tried.profitMinor) },
            { label: 'Margin', value: format.percent(tried.marginPercent) },
            { label: 'Tax', value: format.money(tried.taxMinor) },
            { label: 'Fees', value: format.money(tried.feesMinor) },
            { label: 'It costs', value: format.money(tried.costMinor) },
            {
              label: 'An hour earns',
              value:
                tried.earningsPerHourMinor === null
                  ? '–'
                  : format.money(tried.earningsPerHourMinor),
            },
          ]}
        />
      )}
    </FormSheet>
  )
}
