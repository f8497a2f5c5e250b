import { useState } from 'react'
import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import type { Format } from '../../app/format.ts'
import { Checkbox } from '../../ui/checkbox.tsx'
import { keepTicked, readTicked } from './ticked-lots.ts'

type Draw = CallOutput<'makes.plan'>['draws'][number]

/** What to take out of which drawer, to be ticked off; drawers in order. */
export function PickTicks({
  draws,
  format,
  workId,
  onTicked,
  heading: Heading = 'h2',
}: Readonly<{
  draws: readonly Draw[]
  format: Format
  /** The work whose ticks are kept; absent before it is begun. */
  workId?: string
  onTicked?: (lotIds: ReadonlySet<string>) => void
  heading?: 'h2' | 'h3'
}>) {
  const [ticked, setTicked] = useState(() => readTicked(workId))
  const byDrawer = [...Map.groupBy(draws, ({ drawer }) => drawer)].toSorted(([a], [b]) =>
    a.localeCompare(b, undefined, { numeric: true }),
  )
  const left = draws.filter(({ lotId }) => !ticked.has(lotId)).length
  function tick(lotId: string, isTicked: boolean) {
    const next = new Set(ticked)
    if (isTicked) next.add(lotId)
    else next.delete(lotId)
    setTicked(next)
    if (workId !== undefined) keepTicked(workId, next)
    onTicked?.(next)
  }
  return (
    <section className="bench-pick" aria-labelledby="bench-pick">
      <Heading id="bench-pick" className="bench-head">
        From the drawers
      </Heading>
      {byDrawer.map(([drawer, own]) => (
        <div key={drawer} className="bench-drawer">
          <p className="bench-drawer-name">{drawer === '' ? 'No drawer' : drawer}</p>
          <ul>
            {own.map((draw) => (
              <li key={draw.lotId}>
                <Checkbox
                  checked={ticked.has(draw.lotId)}
                  onChange={(isTicked) => tick(draw.lotId, isTicked)}
                  label={
                    <>
                      {draw.name} <strong>{format.quantity(draw.quantity, draw.unit)}</strong>
                      {draw.dyeLot !== '' && (
                        <span className="bench-soft">{` lot ${draw.dyeLot}`}</span>
                      )}
                    </>
                  }
                />
              </li>
            ))}
          </ul>
        </div>
      ))}
      <p className="bench-soft" role="status">
        {left === 0
          ? 'All of it is on the table.'
          : `${format.counted(left, 'thing')} still to fetch.`}
      </p>
    </section>
  )
}
