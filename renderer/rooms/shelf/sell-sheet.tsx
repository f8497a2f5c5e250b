import { useState } from 'react'
import { parseMoney } from '../../../shared-core/units/parse-money.ts'
import { placeRefusal } from '../../app/place-refusal.ts'
import { useAct } from '../../app/use-act.ts'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { DateInput } from '../../ui/date-input.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { QuantityInput } from '../../ui/quantity-input.tsx'
import { Select } from '../../ui/select.tsx'
import { SideSheet } from '../../ui/side-sheet.tsx'
import type { Piece } from './shelf-room.tsx'

/** Records a sale of one piece. Fees, tax and what it earned are computed by the service. */
export function SellSheet({ piece, onClose }: Readonly<{ piece: Piece; onClose: () => void }>) {
  const format = useFormat()
  const shop = useCall('workshop.read', {}).value
  const here =
    shop?.places.find(({ id }) => id === piece.placeId)?.channelId ?? shop?.channels[0]?.id
  const [channel, setChannel] = useState<string>()
  const [price, setPrice] = useState<readonly [string, number | undefined]>(
    piece.askingMinor === null
      ? ['', undefined]
      : [format.money(piece.askingMinor), piece.askingMinor],
  )
  const [soldOn, setSoldOn] = useState(format.today)
  const sell = useAct('pieces.sell', {
    said: ({ profitMinor }) => `Sold ${piece.code}, earned ${format.money(profitMinor)}`,
    of: [channel, price, soldOn],
  })
  const { at, above } = placeRefusal(sell.refusal, ['channelId', 'priceMinor', 'soldOn'])
  const channelId = channel ?? here
  async function submit() {
    if (channelId === undefined || price[1] === undefined) return
    const answer = await sell.act({
      pieceId: piece.id,
      channelId,
      priceMinor: price[1],
      soldOn,
      note: '',
    })
    if (answer.ok) onClose()
  }
  return (
    <SideSheet
      open
      title={`Sell ${piece.code}`}
      onClose={onClose}
      actions={
        <Button kind="primary" icon="check" busy={sell.isBusy} onClick={() => void submit()}>
          Sold
        </Button>
      }
    >
      <p className="shelf-what">
        {piece.designName}, {piece.colourwayName}
      </p>
      {above !== undefined && <RefusalNotice refusal={above} />}
      <Select
        label="Through"
        error={at('channelId')}
        missing="Choose where it was sold. Channels are entered in Settings."
        value={channelId ?? null}
        options={(shop?.channels ?? []).map(({ id, name }) => ({ value: id, label: name }))}
        onChange={setChannel}
      />
      <QuantityInput
        label="The buyer pays"
        error={at('priceMinor')}
        missing="Say what the buyer pays."
        unit={format.currency}
        autoFocus
        text={price[0]}
        parse={(text) => parseMoney(text, { currency: format.currency, decimal: format.decimal })}
        onText={(text, value) => setPrice([text, value?.amountMinor])}
      />
      <DateInput
        label="Sold on"
        error={at('soldOn')}
        today={format.today}
        value={soldOn}
        onChange={setSoldOn}
      />
      <p className="quiet">Tax and fees are working figures; your adviser and local law decide.</p>
    </SideSheet>
  )
}
