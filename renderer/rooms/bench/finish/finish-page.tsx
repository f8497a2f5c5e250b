import { hrefTo } from '../../../app/place.ts'
import { Room } from '../../../app/room.tsx'
import { useCall } from '../../../app/use-call.ts'
import { useFormat } from '../../../app/use-format.ts'
import { ButtonLink } from '../../../ui/button.tsx'
import { Notice, RefusalNotice } from '../../../ui/notice.tsx'
import { UP } from '../bench-places.ts'
import { FinishDesk } from './finish-desk.tsx'

/** The end of some work: reads it, then lets her say what it came to. */
export function FinishPage({ id }: Readonly<{ id: string }>) {
  const format = useFormat()
  const { value, refusal } = useCall('bench.read', { id })
  const shop = useCall('workshop.read', {}).value
  const work = value?.work
  if (value === undefined || work === undefined || shop === undefined) {
    return (
      <Room title="Finish" back={UP}>
        {refusal === undefined ? (
          <p role="status">Reading the work…</p>
        ) : (
          <RefusalNotice refusal={refusal} />
        )}
      </Room>
    )
  }
  if (work.state === 'done' || work.state === 'given-up') {
    return (
      <Room title={`Finish ${work.designName}`} back={UP}>
        <Notice
          title={work.state === 'done' ? 'This work is finished' : 'This work was given up'}
          actions={<ButtonLink href={hrefTo({ room: 'bench', id })}>See it</ButtonLink>}
        />
      </Room>
    )
  }
  return <FinishDesk read={value} places={shop.places} format={format} />
}
