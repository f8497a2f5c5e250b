import type { Format } from '../../app/format.ts'
import { useCall } from '../../app/use-call.ts'
import { Badge } from '../../ui/badge.tsx'
import { Button } from '../../ui/button.tsx'
import { Table } from '../../ui/table.tsx'
import type { BenchWork } from './bench-places.ts'
import type { MakeStart } from './make-start.ts'
import { startOf, type Waiting, waitingLines } from './waiting-lines.ts'

/** What is promised and not made yet, soonest due first, with what stock says of it. */
export function WaitingTable({
  works,
  format,
  onStart,
  onLog,
}: Readonly<{
  works: readonly BenchWork[]
  format: Format
  onStart: (from: MakeStart) => void
  onLog: (from: MakeStart) => void
}>) {
  const orders = useCall('orders.list', { state: 'open' })
  const cover = useCall('orders.coverAll', { today: format.today })
  const covered = new Map(
    (cover.value?.orders ?? []).flatMap((order) =>
      order.cover.lines.map((line) => [line.lineId, line.coveredUnits] as const),
    ),
  )
  return (
    <Table
      caption="Promised and not made yet"
      captionShown
      rows={waitingLines(orders.value?.orders ?? [], works)}
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
          cell: ({ line, toMake }) => format.counted(toMake, line.unitName),
        },
        { key: 'cover', head: 'Stock', cell: (row) => <Cover row={row} covered={covered} /> },
        { key: 'order', head: 'Order', cell: ({ order }) => `${order.code}, ${order.customer}` },
        {
          key: 'due',
          head: 'Due',
          sortBy: ({ order }) => order.dueOn,
          cell: ({ order }) => (
            <>
              <span className="bench-day">{format.date(order.dueOn)}</span>{' '}
              <span className="bench-soft bench-day">{format.away(order.dueOn)}</span>
            </>
          ),
        },
      ]}
      actions={(row) => (
        <div className="bench-row-acts">
          <Button small icon="check" onClick={() => onLog(startOf(row, row.toMake))}>
            Log a make
          </Button>
          {row.left > 0 ? (
            <Button small icon="thread" onClick={() => onStart(startOf(row, row.left))}>
              Start
            </Button>
          ) : (
            <span className="bench-soft">At the bench</span>
          )}
        </div>
      )}
      empty={
        orders.value !== undefined && (
          <p className="quiet">
            Every open order is made. What you make for the Shelf is started with the button above.
          </p>
        )
      }
    />
  )
}

function Cover({ row, covered }: Readonly<{ row: Waiting; covered: ReadonlyMap<string, number> }>) {
  const units = covered.get(row.line.id)
  if (units === undefined) return <span className="bench-soft">…</span>
  if (units >= row.toMake) return <Badge tone="good">Covered</Badge>
  return <Badge tone="bad">{units === 0 ? 'Short' : `Enough for ${units}`}</Badge>
}
