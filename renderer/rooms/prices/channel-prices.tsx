import { useState } from 'react'
import type { PriceInputs, PriceSheet } from '../../../shared-core/pricing/price-sheet.ts'
import type { Format } from '../../app/format.ts'
import { Badge } from '../../ui/badge.tsx'
import { Button, ButtonLink } from '../../ui/button.tsx'
import { EmptyState } from '../../ui/empty-state.tsx'
import { Notice } from '../../ui/notice.tsx'
import { Table } from '../../ui/table.tsx'
import type { Column } from '../../ui/table-column.ts'
import { SetPriceSheet } from './set-price-sheet.tsx'

export type ChannelPrice = PriceSheet['channels'][number]

/** What to ask in each channel, and what each price leaves after fees, tax and cost. */
export function ChannelPrices({
  sheet,
  inputs,
  designId,
  colourwayId,
  format,
}: Readonly<{
  sheet: PriceSheet
  inputs: PriceInputs
  designId: string
  colourwayId: string
  format: Format
}>) {
  const [open, setOpen] = useState<ChannelPrice>()
  return (
    <section>
      <Table
        caption="Prices by channel"
        captionShown
        rows={sheet.channels}
        rowKey={({ channelId }) => channelId}
        columns={columns(format, inputs)}
        actions={(row) => (
          <Button
            small
            icon="edit"
            onClick={() => setOpen(row)}
            aria-label={`Set the price at ${row.channelName}`}
          >
            Set
          </Button>
        )}
        empty={
          <EmptyState
            picture="ledger"
            action={<ButtonLink href="#/settings">Go to Settings</ButtonLink>}
          >
            Enter the channels you sell through, with their fees and tax, and each gets its price
            here.
          </EmptyState>
        }
      />
      {sheet.channels.map(
        ({ channelId, channelName, refusal }) =>
          refusal && (
            <Notice key={channelId} kind="attention" title={`${channelName}: ${refusal.message}`}>
              {refusal.next}
            </Notice>
          ),
      )}
      {open !== undefined && (
        <SetPriceSheet
          channel={open}
          inputs={inputs}
          designId={designId}
          colourwayId={colourwayId}
          format={format}
          onClose={() => setOpen(undefined)}
        />
      )}
    </section>
  )
}

function columns(format: Format, inputs: PriceInputs): readonly Column<ChannelPrice>[] {
  return [
    { key: 'name', head: 'Channel', cell: ({ channelName }) => channelName },
    {
      key: 'price',
      head: 'Price',
      align: 'end',
      cell: ({ priceMinor, floorMinor, channelId }) => (
        <>
          <strong className="prices-price">
            {floorMinor === null && !(channelId in inputs.setPrices)
              ? 'none'
              : format.money(priceMinor)}
          </strong>
          {channelId in inputs.setPrices && <span className="prices-own">yours</span>}
        </>
      ),
    },
    {
      key: 'suggested',
      head: 'For your margin',
      align: 'end',
      cell: ({ suggestedMinor }) =>
        suggestedMinor === null ? 'none' : format.money(suggestedMinor),
    },
    {
      key: 'floor',
      head: 'Floor',
      align: 'end',
      cell: ({ floorMinor, priceMinor }) =>
        floorMinor === null ? (
          'none'
        ) : (
          <>
            {format.money(floorMinor)}
            {priceMinor < floorMinor && (
              <>
                {' '}
                <Badge tone="bad">below</Badge>
              </>
            )}
          </>
        ),
    },
    { key: 'tax', head: 'Tax', align: 'end', cell: ({ taxMinor }) => format.money(taxMinor) },
    { key: 'fees', head: 'Fees', align: 'end', cell: ({ feesMinor }) => format.money(feesMinor) },
    {
      key: 'profit',
      head: 'Leaves',
      align: 'end',
      cell: ({ profitMinor }) => <strong>{format.money(profitMinor)}</strong>,
    },
    {
      key: 'margin',
      head: 'Margin',
      align: 'end',
      cell: ({ marginPercent }) => format.percent(marginPercent),
    },
    {
      key: 'hour',
      head: 'An hour earns',
      align: 'end',
      cell: ({ earningsPerHourMinor }) =>
        earningsPerHourMinor === null ? '' : format.money(earningsPerHourMinor),
    },
  ]
}
