import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import type { Format } from '../../app/format.ts'
import { hrefTo } from '../../app/place.ts'
import { Room } from '../../app/room.tsx'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Badge, type BadgeTone } from '../../ui/badge.tsx'
import { ButtonLink } from '../../ui/button.tsx'
import { EmptyState } from '../../ui/empty-state.tsx'
import { FigureList } from '../../ui/figure-list.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import './today.css'

type Day = CallOutput<'today.read'>
type Attention = Day['attention'][number]

const kindWords: Readonly<Record<Attention['kind'], readonly [BadgeTone, string]>> = {
  'order-due': ['busy', 'Due'],
  'order-short': ['bad', 'Short'],
  'stock-low': ['attention', 'Low'],
  'stock-unweighed': ['quiet', 'Not weighed'],
  'price-missing': ['attention', 'No price'],
  'slot-unassigned': ['attention', 'No bead'],
  'piece-unplaced': ['attention', 'Nowhere'],
}

/** Today: one page in the morning. Each line leads to its cure. */
export function TodayRoom() {
  const format = useFormat()
  const { value, refusal } = useCall('today.read', { today: format.today })
  const designs = useCall('designs.list', {}).value?.designs
  const materials = useCall('materials.list', {}).value?.materials
  const isNew = designs?.length === 0 && materials?.length === 0
  return (
    <Room
      title="Today"
      aside={value !== undefined && !isNew && <Figures day={value} format={format} />}
    >
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}
      <p className="today-date">{format.date(format.today)}</p>
      {isNew && <FirstSteps />}
      {!isNew && value !== undefined && (
        <AttentionList attention={value.attention} format={format} />
      )}
    </Room>
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

function AttentionList({
  attention,
  format,
}: Readonly<{ attention: readonly Attention[]; format: Format }>) {
  if (attention.length === 0) {
    return (
      <EmptyState picture="calendar">
        Nothing needs you today: every order is covered and nothing runs low.
      </EmptyState>
    )
  }
  return (
    <ul className="today-list">
      {attention.map((line) => (
        <li key={`${line.kind} ${line.openId} ${line.text}`}>
          <a
            href={hrefTo({ room: line.room, id: line.openId ?? undefined })}
            className="today-line"
          >
            <KindBadge kind={line.kind} />
            <span className="today-text">
              <strong>{line.text}</strong>
              <span className="quiet">{line.detail}</span>
            </span>
            {line.dueOn !== null && (
              <span className="today-due">
                <span className="nowrap">{format.date(line.dueOn)}</span>
                <span className="quiet">{format.away(line.dueOn)}</span>
              </span>
            )}
          </a>
        </li>
      ))}
    </ul>
  )
}

function KindBadge({ kind }: Readonly<{ kind: Attention['kind'] }>) {
  const [tone, words] = kindWords[kind]
  return (
    <span className="today-kind">
      <Badge tone={tone}>{words}</Badge>
    </span>
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
