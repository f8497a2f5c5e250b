import type { Format } from '../../../app/format.ts'
import { hrefTo } from '../../../app/place.ts'
import { Notice } from '../../../ui/notice.tsx'
import type { BenchWork } from '../bench-places.ts'

/** Whom the work is for and what has become of it. */
export function WorkState({ work, format }: Readonly<{ work: BenchWork; format: Format }>) {
  const { order, finished } = work
  if (work.state === 'given-up') {
    return (
      <Notice title="This work was given up">
        {work.note === '' ? 'Nothing was booked, and what it held is free again.' : work.note}
      </Notice>
    )
  }
  if (finished !== null) {
    return (
      <Notice title={`Finished on ${format.date(finished.madeOn)}`}>
        {`${format.counted(finished.units, work.unitName)} made. `}
        <a href={hrefTo({ room: 'shelf' })}>See the Shelf</a>
      </Notice>
    )
  }
  return (
    <p className="bench-for">
      {order === null ? (
        'For the shelf. The beads it takes are held for it until it is finished or given up.'
      ) : (
        <>
          For order <a href={hrefTo({ room: 'orders' })}>{order.code}</a>
          {`, ${order.customer}, due ${format.date(order.dueOn)}, ${format.away(order.dueOn)}.`}
        </>
      )}
    </p>
  )
}
