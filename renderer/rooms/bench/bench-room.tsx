import { useState } from 'react'
import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import { Room } from '../../app/room.tsx'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button, ButtonLink } from '../../ui/button.tsx'
import { EmptyState } from '../../ui/empty-state.tsx'
import { Notice } from '../../ui/notice.tsx'
import { Table } from '../../ui/table.tsx'
import { MakeSheet, type MakeStart } from './make-sheet.tsx'
import './bench.css'

type Order = CallOutput<'orders.list'>['orders'][number]
type Waiting = Readonly<{ order: Order; line: Order['lines'][number]; left: number }>

/** The Bench: what is promised and not made yet, and logging what was made. */
export function BenchRoom() {
  const format = useFormat()
  const orders = useCall('orders.list', { state: 'open' })
  const designs = useCall('designs.list', {})
  const [start, setStart] = useState<MakeStart>()
  const waiting = waitingLines(orders.value?.orders ?? [])
  const hasDesigns = (designs.value?.designs.length ?? 0) > 0
  return (
    <Room
      title="Bench"
      actions={
        hasDesigns && (
          <Button kind="primary" icon="thread" onClick={() => setStart({})}>
            Log a make
          </Button>
        )
      }
    >
      {!hasDesigns && designs.value !== undefined ? (
        <EmptyState
          picture="needle"
          action={
            <ButtonLink kind="primary" href="#/designs">
              Go to Designs
            </ButtonLink>
          }
        >
          Once there is a design, what you make of it is logged here: beads leave the drawers,
          pieces reach the Shelf.
        </EmptyState>
      ) : (
        <Table
          caption="Promised and not made yet"
          captionShown
          rows={waiting}
          rowKey={({ line }) => line.id}
          columns={[
            {
              key: 'design',
              head: 'Design',
              cell: ({ line }) => `${line.designName}, ${line.colourwayName}`,
            },
            {
              key: 'left',
              head: 'To make',
              align: 'end',
              cell: ({ line, left }) => format.counted(left, line.unitName),
            },
            {
              key: 'order',
              head: 'Order',
              cell: ({ order }) => `${order.code}, ${order.customer}`,
            },
            {
              key: 'due',
              head: 'Due',
              sortBy: ({ order }) => order.dueOn,
              cell: ({ order }) => `${format.date(order.dueOn)}, ${format.away(order.dueOn)}`,
            },
          ]}
          actions={(row) => (
            <Button small icon="thread" onClick={() => setStart(startOf(row))}>
              Log a make
            </Button>
          )}
          empty={
            <p className="quiet">
              Every open order is made. What you make for the Shelf is logged with the button above.
            </p>
          }
        />
      )}
      <Notice title="The row reader is not built yet">
        It will show and speak the row you are on, with the thread bridge to use. Until then this
        room logs what was made. Look up now and then, rest your hands, and mind needles and blades.
      </Notice>
      {start !== undefined && <MakeSheet start={start} onClose={() => setStart(undefined)} />}
    </Room>
  )
}

function waitingLines(orders: readonly Order[]): readonly Waiting[] {
  return orders
    .flatMap((order) => order.lines.map((line) => ({ order, line, left: line.units - line.made })))
    .filter(({ left }) => left > 0)
}

function startOf({ line, left }: Waiting): MakeStart {
  return {
    designId: line.designId,
    colourwayId: line.colourwayId,
    orderLineId: line.id,
    units: left,
  }
}
