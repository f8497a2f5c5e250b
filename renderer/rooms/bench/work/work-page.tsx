import { hrefTo } from '../../../app/place.ts'
import { Room } from '../../../app/room.tsx'
import { useCall } from '../../../app/use-call.ts'
import { useFormat } from '../../../app/use-format.ts'
import { ButtonLink } from '../../../ui/button.tsx'
import { FigureList } from '../../../ui/figure-list.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { isBegun, READING, UP } from '../bench-places.ts'
import { PickTicks } from '../pick-ticks.tsx'
import { placeWords } from '../place-words.ts'
import { GiveUp } from './give-up.tsx'
import { WorkState } from './work-state.tsx'

/** One work at the bench: what to fetch, how far it is, and its end. */
export function WorkPage({ id }: Readonly<{ id: string }>) {
  const format = useFormat()
  const { value, refusal } = useCall('bench.read', { id })
  const work = value?.work
  const isOpen = work?.state === 'begun' || work?.state === 'resting'
  return (
    <Room
      title={work?.designName ?? 'Bench'}
      note={work?.colourwayName}
      back={UP}
      actions={
        isOpen && (
          <>
            <GiveUp work={work} />
            <ButtonLink icon="check" href={hrefTo({ room: 'bench', id, sub: 'finish' })}>
              Finish
            </ButtonLink>
            <ButtonLink
              kind="primary"
              icon="forward"
              href={hrefTo({ room: 'bench', id, sub: READING })}
            >
              {isBegun(work) ? 'Go on' : 'Begin row by row'}
            </ButtonLink>
          </>
        )
      }
      aside={
        work && (
          <FigureList
            figures={[
              {
                label: 'Done',
                value: `${format.count(work.unitsDone)} of ${format.counted(work.units, work.unitName)}`,
              },
              ...(isOpen ? [{ label: 'At', value: placeWords(work, format) }] : []),
              { label: 'Time so far', value: format.duration(work.workedS) },
              {
                label: 'Reckoned in all',
                value: format.duration(work.plannedS.value),
                basis: work.plannedS.basis,
                range: format.range(work.plannedS, format.duration),
              },
              { label: 'Begun', value: format.date(work.begunOn) },
            ]}
          />
        )
      }
    >
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}
      {work !== undefined && <WorkState work={work} format={format} />}
      {isOpen && value !== undefined && value.held.length > 0 && (
        <PickTicks workId={id} draws={value.held} format={format} />
      )}
    </Room>
  )
}
