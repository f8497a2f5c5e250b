import { useState } from 'react'
import type { Format } from '../../app/format.ts'
import { go, hrefTo } from '../../app/place.ts'
import { Room } from '../../app/room.tsx'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Badge } from '../../ui/badge.tsx'
import { ButtonLink } from '../../ui/button.tsx'
import { EmptyState } from '../../ui/empty-state.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import { Table } from '../../ui/table.tsx'
import type { Column } from '../../ui/table-column.ts'
import { NEW_ORDER } from './order-places.ts'
import { type Order, type OrderCover, stateWords, worthOf } from './order-words.ts'

type Covers = ReadonlyMap<string, OrderCover>

/** Promises, soonest due first, each with what stock does for it. */
export function OrderList() {
  const format = useFormat()
  const [state, setState] = useState<'open' | 'all'>('open')
  const all = useCall('orders.list', { state: 'all' })
  const shown = useCall('orders.list', { state })
  const covers = useCall('orders.coverAll', { today: format.today })
  const byOrder: Covers = new Map(
    covers.value?.orders.map(({ orderId, cover }) => [orderId, cover]),
  )
  return (
    <Room
      title="Orders"
      actions={
        all.value?.orders.length === 0 ? undefined : (
          <ButtonLink kind="primary" icon="add" href={hrefTo({ room: 'orders', id: NEW_ORDER })}>
            New order
          </ButtonLink>
        )
      }
    >
      {shown.refusal !== undefined && <RefusalNotice refusal={shown.refusal} />}
      {all.value?.orders.length === 0 ? (
        <EmptyState
          picture="calendar"
          action={
            <ButtonLink kind="primary" icon="add" href={hrefTo({ room: 'orders', id: NEW_ORDER })}>
              New order
            </ButtonLink>
          }
        >
          Enter what you promised and by when: you see at once whether the drawers cover it beside
          your other promises.
        </EmptyState>
      ) : (
        <>
          <SegmentedChoice
            label="Which orders"
            labelHidden
            value={state}
            options={[
              { value: 'open', label: 'Open' },
              { value: 'all', label: 'All' },
            ]}
            onChange={setState}
          />
          <Table
            caption="Orders"
            rows={shown.value?.orders ?? []}
            rowKey={({ id }) => id}
            onOpen={({ id }) => go({ room: 'orders', id })}
            columns={columns(format, byOrder)}
            empty={<p className="quiet">No open order. What is done stands under All.</p>}
          />
        </>
      )}
    </Room>
  )
}

function columns(format: Format, covers: Covers): readonly Column<Order>[] {
  return [
    {
      key: 'code',
      head: 'Order',
      sortBy: ({ code }) => code,
      cell: ({ code }) => <span className="nowrap">{code}</span>,
    },
    {
      key: 'customer',
      head: 'For',
      sortBy: ({ customer }) => customer,
      cell: ({ customer }) => customer,
    },
    {
      key: 'due',
      head: 'Due',
      sortBy: ({ dueOn }) => dueOn,
      cell: ({ dueOn }) => (
        <>
          <span className="nowrap">{format.date(dueOn)}</span>
          <span className="order-away">{format.away(dueOn)}</span>
        </>
      ),
    },
    {
      key: 'lines',
      head: 'What',
      cell: ({ lines }) => lines.map((line) => lineWords(line, format)).join(', '),
    },
    {
      key: 'total',
      head: 'Worth',
      align: 'end',
      cell: (order) => worthOf(order, format),
    },
    {
      key: 'state',
      head: 'State',
      cell: (order) => <OrderBadge order={order} cover={covers.get(order.id)} />,
    },
  ]
}

export function lineWords(line: Order['lines'][number], format: Format): string {
  return `${format.counted(line.units, line.unitName)} of ${line.designName}`
}

/** What stock does for an open order, in a word; else the order's state. */
export function OrderBadge({
  order,
  cover,
}: Readonly<{ order: Order; cover: OrderCover | undefined }>) {
  if (order.state === 'open' && cover !== undefined) {
    return cover.covered ? <Badge tone="good">Covered</Badge> : <Badge tone="bad">Short</Badge>
  }
  const [tone, words] = stateWords[order.state]
  return <Badge tone={tone}>{words}</Badge>
}
