import { go } from '../../app/place.ts'
import { Room } from '../../app/room.tsx'
import { useAct } from '../../app/use-act.ts'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { FigureList } from '../../ui/figure-list.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { CoverView } from './cover-view.tsx'
import { type Order, worthOf } from './order-words.ts'
import { PromisedLines } from './promised-lines.tsx'

/** One order: what was promised, how far it is, and whether stock covers the rest. */
export function OrderPage({ id }: Readonly<{ id: string }>) {
  const format = useFormat()
  const { value, refusal } = useCall('orders.read', { id })
  const order = value?.order
  const isOpen = order?.state === 'open' || order?.state === 'ready'
  const cover = useCall('orders.cover', isOpen ? { today: format.today, order: { id } } : null)
  return (
    <Room
      title={order === undefined ? 'Order' : `${order.code}, ${order.customer}`}
      back={{ href: '#/orders', label: 'Orders' }}
      actions={order !== undefined && <Acts order={order} />}
      aside={
        order && (
          <FigureList
            figures={[
              { label: 'Due', value: format.date(order.dueOn), note: format.away(order.dueOn) },
              { label: 'Worth', value: worthOf(order, format) },
              { label: 'Promised', value: format.date(order.promisedOn) },
            ]}
          />
        )
      }
    >
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}
      {order !== undefined && <PromisedLines order={order} isOpen={isOpen} />}
      {order !== undefined && order.note !== '' && <p className="order-note">{order.note}</p>}
      {isOpen && cover.value !== undefined && <CoverView cover={cover.value} format={format} />}
      {cover.refusal !== undefined && <RefusalNotice refusal={cover.refusal} />}
    </Room>
  )
}

const stateSaid = { open: 'Opened', closed: 'Closed', cancelled: 'Cancelled' } as const

function Acts({ order }: Readonly<{ order: Order }>) {
  const setState = useAct('orders.setState', {
    said: (_, { state }) => `${stateSaid[state]} ${order.code}`,
  })
  const set = (state: 'open' | 'closed' | 'cancelled') => void setState.act({ id: order.id, state })
  if (order.state === 'closed' || order.state === 'cancelled') {
    return <Button onClick={() => set('open')}>Open it again</Button>
  }
  return (
    <>
      <Button icon="edit" onClick={() => go({ room: 'orders', id: order.id, sub: 'change' })}>
        Change
      </Button>
      <Button onClick={() => set('cancelled')}>Cancel the order</Button>
      <Button kind="primary" icon="check" onClick={() => set('closed')}>
        Handed over
      </Button>
    </>
  )
}
