import { useRef, useState } from 'react'
import type { CallOutput } from '../../../../shared-core/contract/calls.ts'
import type { Learned } from '../../../../shared-core/design/learned.ts'
import { go, hrefTo } from '../../../app/place.ts'
import { refreshAfter } from '../../../app/refresh.ts'
import { Room } from '../../../app/room.tsx'
import { useCall } from '../../../app/use-call.ts'
import { useLearned } from '../../../app/use-learned.ts'
import { ButtonLink } from '../../../ui/button.tsx'
import { Notice, RefusalNotice } from '../../../ui/notice.tsx'
import { UP } from '../bench-places.ts'
import { RowReader } from '../reader/row-reader.tsx'
import { useKeep } from './use-keep.ts'

type BenchRead = CallOutput<'bench.read'>
type Materials = CallOutput<'materials.list'>['materials']

/** The row reader over one work, from where the hand was last. */
export function ReadingPage({ id }: Readonly<{ id: string }>) {
  const read = useCall('bench.read', { id })
  const materials = useCall('materials.list', {}).value?.materials
  const learned = useLearned()
  if (read.value === undefined || materials === undefined || learned === undefined) {
    return (
      <Room title="Bench" back={UP}>
        {read.refusal === undefined ? (
          <p role="status">Reading the work…</p>
        ) : (
          <RefusalNotice refusal={read.refusal} />
        )}
      </Room>
    )
  }
  const { work } = read.value
  if (work.state === 'done' || work.state === 'given-up') {
    return (
      <Room title={work.designName} back={UP}>
        <Notice
          title={work.state === 'done' ? 'This work is finished' : 'This work was given up'}
          actions={<ButtonLink href={hrefTo({ room: 'bench', id })}>See it</ButtonLink>}
        />
      </Room>
    )
  }
  return <Reading read={read.value} materials={materials} learned={learned} />
}

function Reading({
  read,
  materials,
  learned,
}: Readonly<{ read: BenchRead; materials: Materials; learned: Learned }>) {
  // As it stood when the page was opened: from then on the reader itself knows where the hand is.
  const [{ work, body, fillings }] = useState(read)
  const [stock] = useState(materials)
  const [known] = useState(learned)
  const keeper = useKeep()
  const isResting = useRef(false)
  const { id, place, workedS, unitsDone, units } = work
  async function leave(sub?: 'finish') {
    isResting.current = true
    keeper.tell({ ...(keeper.last() ?? { id, place, workedS, unitsDone }), resting: true })
    // The page it leads to then begins with the row and the time the reader ended with.
    await keeper.settled()
    await refreshAfter('bench.keep')
    go({ room: 'bench', id, sub })
  }
  return (
    <RowReader
      title={work.designName}
      body={body}
      fillings={fillings}
      materials={stock}
      learned={known}
      units={units}
      place={place}
      workedS={workedS}
      onKeep={(kept) => keeper.tell({ id, ...kept, resting: isResting.current })}
      onFinish={() => void leave('finish')}
      onLeave={() => void leave()}
    />
  )
}
