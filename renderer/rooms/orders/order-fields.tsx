import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import type { PlacedRefusal } from '../../app/place-refusal.ts'
import { Button } from '../../ui/button.tsx'
import { DateInput } from '../../ui/date-input.tsx'
import { TextInput } from '../../ui/text-input.tsx'
import { blankLine, type LineDraft, type OrderDraft } from './order-draft.ts'
import { OrderLine } from './order-line.tsx'

/** The fields of an order that can say what is wrong with them, as the contract names them. */
export const orderFieldNames = [
  'order.customer',
  'order.promisedOn',
  'order.dueOn',
  'order.note',
] as const

type OrderPart = Readonly<{
  draft: OrderDraft
  set: (patch: Partial<OrderDraft>) => void
}>

/** Who it is for, and by when. */
export function OrderHead({
  draft,
  set,
  at,
  today,
}: OrderPart &
  Readonly<{ at: PlacedRefusal<(typeof orderFieldNames)[number]>['at']; today: string }>) {
  return (
    <div className="order-head">
      <TextInput
        label="For"
        error={at('order.customer')}
        missing="Say who it is for."
        longest={120}
        hint="A shop, a market or an order number."
        value={draft.customer}
        onChange={(customer) => set({ customer })}
      />
      <DateInput
        label="Promised on"
        error={at('order.promisedOn')}
        today={today}
        value={draft.promisedOn}
        onChange={(promisedOn) => set({ promisedOn })}
      />
      <DateInput
        label="Due"
        error={at('order.dueOn')}
        today={today}
        value={draft.dueOn}
        onChange={(dueOn) => set({ dueOn })}
      />
    </div>
  )
}

/** What is ordered, line by line. */
export function OrderLines({
  draft: { lines },
  set,
  setLine,
  designs,
}: OrderPart &
  Readonly<{
    setLine: (key: number, patch: Partial<LineDraft>) => void
    designs: CallOutput<'designs.list'>['designs']
  }>) {
  const isBlank = lines.every(({ designId }) => designId === null)
  return (
    <>
      <ol className="order-lines">
        {lines.map((line, index) => (
          <OrderLine
            key={line.key}
            line={line}
            isNeeded={index === 0 && isBlank}
            designs={designs}
            onChange={(patch) => setLine(line.key, patch)}
            onRemove={
              lines.length === 1
                ? undefined
                : () => set({ lines: lines.filter(({ key }) => key !== line.key) })
            }
          />
        ))}
      </ol>
      <div>
        <Button icon="add" onClick={() => set({ lines: [...lines, blankLine()] })}>
          Another design
        </Button>
      </div>
    </>
  )
}
