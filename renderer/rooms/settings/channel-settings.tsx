import { useState } from 'react'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { EmptyState } from '../../ui/empty-state.tsx'
import { Table } from '../../ui/table.tsx'
import { ChannelForm } from './channel-form.tsx'
import { channelKinds } from './channel-words.ts'
import type { Channel } from './settings-types.ts'

/** The ways pieces are sold, with their fees and tax. */
export function ChannelSettings({ channels }: Readonly<{ channels: readonly Channel[] }>) {
  const format = useFormat()
  const [open, setOpen] = useState<Channel | 'new'>()
  return (
    <div className="settings-list">
      <div>
        <Button icon="add" onClick={() => setOpen('new')}>
          Add a channel
        </Button>
      </div>
      <Table
        caption="Channels"
        rows={channels}
        rowKey={({ id }) => id}
        onOpen={setOpen}
        columns={[
          { key: 'name', head: 'Channel', cell: ({ name }) => name },
          { key: 'kind', head: 'Kind', cell: ({ kind }) => channelKinds[kind] },
          {
            key: 'fee',
            head: 'Keeps',
            align: 'end',
            cell: (row) => fee(row.feePercent, row.feeFixedMinor),
          },
          {
            key: 'payment',
            head: 'Payment',
            align: 'end',
            cell: (row) => fee(row.paymentPercent, row.paymentFixedMinor),
          },
          {
            key: 'tax',
            head: 'Tax',
            align: 'end',
            cell: ({ taxPercent, taxIncluded }) =>
              `${format.percent(taxPercent)} ${taxIncluded ? 'in the price' : 'on top'}`,
          },
        ]}
        empty={
          <EmptyState picture="ledger">
            A market, a web shop, a gallery: each gets a price that leaves what you want.
          </EmptyState>
        }
      />
      {open !== undefined && (
        <ChannelForm
          key={open === 'new' ? 'new' : open.id}
          channel={open === 'new' ? undefined : open}
          onClose={() => setOpen(undefined)}
        />
      )}
    </div>
  )
  function fee(percent: string, fixedMinor: number): string {
    const parts = [
      Number(percent) === 0 ? '' : format.percent(percent),
      fixedMinor === 0 ? '' : format.money(fixedMinor),
    ]
    return parts.filter((part) => part !== '').join(' + ') || 'nothing'
  }
}
