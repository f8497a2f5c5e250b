import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import type { Format } from '../../app/format.ts'
import { Room } from '../../app/room.tsx'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { ButtonLink } from '../../ui/button.tsx'
import { EmptyState } from '../../ui/empty-state.tsx'
import { FigureList } from '../../ui/figure-list.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { AttentionList } from './attention-list.tsx'
import { DaysAhead } from './days-ahead.tsx'
import { OnTheBench } from './on-the-bench.tsx'
import './today.css'

type Day = CallOutput<'today.read'>

/** Today: one page in the morning. Each line leads to its cure. */
export function TodayRoom() {
  const format = useFormat()
  const { value, refusal } = useCall('today.read', { today: format.today })
  const designs = useCall('designs.list', {}).value?.designs
  const materials = useCall('materials.list', {}).value?.materials
  const orders = useCall('orders.list', { state: 'open' }).value?.orders
  const works = useCall('bench.list', { state: 'under-way' }).value?.works
  const isNew = designs?.length === 0 && materials?.length === 0
  return (
    <Room
      title="Today"
      note={format.date(format.today)}
      aside={value !== undefined && !isNew && <Figures day={value} format={format} />}
    >
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}

      {isNew && <FirstSteps />}
      {!isNew && value !== undefined && (
        <>
          <DaysAhead orders={orders ?? []} shortIds={shortOrders(value)} today={format.today} />
          <OnTheBench works={works ?? []} format={format} />
          <AttentionList attention={value.attention} materials={materials ?? []} format={format} />
        </>
      )}
    </Room>
  )
}

function shortOrders({ attention }: Day): ReadonlySet<string> {
  return new Set(
    attention.flatMap(({ kind, openId }) =>
      kind === 'order-short' && openId !== null ? [openId] : [],
    ),
  )
}

function Figures({ day, format }: Readonly<{ day: Day; format: Format }>) {
  return (
    <FigureList
      figures={[
        { label: 'Taken this month', value: format.money(day.takenThisMonthMinor) },
        { label: 'Open orders', value: format.count(day.openOrders) },
        { label: 'Pieces on the shelf', value: format.count(day.piecesHere) },
        { label: 'Stock at cost', value: format.money(day.stockValueMinor) },
      ]}
    />
  )
}

function FirstSteps() {
  return (
    <EmptyState
      picture="strand"
      action={
        <div className="button-row">
          <ButtonLink kind="primary" href="#/stock/bring-in">
            Bring in your stock
          </ButtonLink>
          <ButtonLink href="#/designs">Begin with a design</ButtonLink>
          <ButtonLink href="#/settings">Set up channels and places</ButtonLink>
        </div>
      }
    >
      This page will say each morning what is due, short and low. It needs your drawers and your
      designs first.
    </EmptyState>
  )
}
