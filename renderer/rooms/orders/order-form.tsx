import { useDeferredValue, useState } from 'react'
import { go, hrefTo } from '../../app/place.ts'
import { placeRefusal } from '../../app/place-refusal.ts'
import { Room } from '../../app/room.tsx'
import { useAct } from '../../app/use-act.ts'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button, ButtonLink } from '../../ui/button.tsx'
import { EmptyState } from '../../ui/empty-state.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { NoteInput } from '../note-input.tsx'
import { CoverView } from './cover-view.tsx'
import {
  blankDraft,
  coverInputOf,
  draftOf,
  inputOf,
  isChosen,
  type LineDraft,
  type OrderDraft,
} from './order-draft.ts'
import { OrderHead, OrderLines, orderFieldNames } from './order-fields.tsx'

/** Enters an order, or changes one; stock's answer follows while it is typed. */
export function OrderForm({ id }: Readonly<{ id?: string }>) {
  const format = useFormat()
  const saved = useCall('orders.read', id === undefined ? null : { id })
  if (id === undefined) return <Form initial={blankDraft(format.today)} />
  if (saved.refusal !== undefined) {
    return (
      <Room title="Order" back={{ href: '#/orders', label: 'Orders' }}>
        <RefusalNotice refusal={saved.refusal} />
      </Room>
    )
  }
  return saved.value && <Form initial={draftOf(saved.value.order, format.money)} id={id} />
}

function Form({ initial, id }: Readonly<{ initial: OrderDraft; id?: string }>) {
  const format = useFormat()
  const [draft, setDraft] = useState(initial)
  const designs = useCall('designs.list', {}).value?.designs
  const asked = useDeferredValue(coverInputOf(draft))
  const cover = useCall(
    'orders.cover',
    asked === null
      ? null
      : { today: format.today, order: { draft: asked, ...(id === undefined ? {} : { id }) } },
  )
  const save = useAct('orders.save', {
    said: ({ code }) => (id === undefined ? `Entered ${code}` : `Saved ${code}`),
    of: draft,
  })
  const { at, above } = placeRefusal(save.refusal, orderFieldNames)
  const set = (patch: Partial<OrderDraft>) => setDraft((now) => ({ ...now, ...patch }))
  const setLine = (key: number, patch: Partial<LineDraft>) =>
    setDraft((now) => ({
      ...now,
      lines: now.lines.map((line) => (line.key === key ? { ...line, ...patch } : line)),
    }))
  const input = inputOf(draft)
  async function submit() {
    if (input === null || !isChosen(draft)) return
    const answer = await save.act({ ...(id === undefined ? {} : { id }), order: input })
    if (answer.ok) go({ room: 'orders', id: answer.value.id })
  }
  return (
    <Room
      title={id === undefined ? 'New order' : 'Change the order'}
      back={{
        href: id === undefined ? '#/orders' : hrefTo({ room: 'orders', id }),
        label: id === undefined ? 'Orders' : 'The order',
      }}
      actions={
        <Button kind="primary" icon="check" busy={save.isBusy} onClick={() => void submit()}>
          {id === undefined ? 'Promise it' : 'Save'}
        </Button>
      }
    >
      {designs?.length === 0 ? (
        <EmptyState
          picture="strand"
          action={<ButtonLink href="#/designs">Go to Designs</ButtonLink>}
        >
          An order is for a design. Draw one or bring in a chart first.
        </EmptyState>
      ) : (
        <div className="order-form">
          {above !== undefined && <RefusalNotice refusal={above} />}
          <OrderHead {...{ draft, set, at }} today={format.today} />
          <OrderLines {...{ draft, set, setLine }} designs={designs ?? []} />
          {cover.refusal !== undefined && <RefusalNotice refusal={cover.refusal} />}
          {cover.value !== undefined && <CoverView cover={cover.value} format={format} />}
          <NoteInput
            error={at('order.note')}
            rows={2}
            value={draft.note}
            onChange={(note) => set({ note })}
          />
        </div>
      )}
    </Room>
  )
}
