import { Room } from '../../../app/room.tsx'
import { useAct } from '../../../app/use-act.ts'
import { useCall } from '../../../app/use-call.ts'
import { useFormat } from '../../../app/use-format.ts'
import { Button } from '../../../ui/button.tsx'
import { EmptyState } from '../../../ui/empty-state.tsx'
import { FigureList } from '../../../ui/figure-list.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { UP } from '../bench-places.ts'
import { CullTable } from './cull-table.tsx'
import { PaceTable } from './pace-table.tsx'
import { percentWords } from './percent-words.ts'
import { TimedMakes } from './timed-makes.tsx'

/** What the workshop has learnt of itself, from which makes, and how to leave one out. */
export function PacePage() {
  const format = useFormat()
  const { value, refusal } = useCall('workshop.pace', {})
  const forget = useAct('pace.leaveOut', {
    said: (_, { makeIds, leftOut }) =>
      `${leftOut ? 'Left out' : 'Took in again'} ${format.counted(makeIds.length, 'make')}`,
  })
  const counted = (value?.makes ?? []).filter(({ leftOut }) => !leftOut)
  const leaveOut = (makeIds: string[], leftOut: boolean) => void forget.act({ makeIds, leftOut })
  return (
    <Room
      title="What the bench has taught"
      back={UP}
      actions={
        counted.length > 0 && (
          <Button
            onClick={() =>
              leaveOut(
                counted.map(({ makeId }) => makeId),
                true,
              )
            }
          >
            Begin to learn anew
          </Button>
        )
      }
      aside={
        value && (
          <FigureList
            figures={[
              { label: 'Makes with their time kept', value: format.count(value.sessions.time) },
              {
                label: 'Thread, over what the route reckons',
                value: percentWords(value.learned.threadUse.value - 1, format),
                basis: value.learned.threadUse.basis,
                note: fromWords(value.sessions.thread, format.counted),
              },
            ]}
          />
        )
      }
    >
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}
      {forget.refusal !== undefined && <RefusalNotice refusal={forget.refusal} />}
      <p className="bench-for">
        Every time, cost and need in the studio rests on these figures. They begin as the trade’s
        own and come nearer to yours with each make; one odd day moves them little.
      </p>
      {value !== undefined && <PaceTable learned={value.learned} format={format} />}
      {value !== undefined && value.cullCounts.length > 0 && (
        <CullTable counts={value.cullCounts} rates={value.learned.cullRates} format={format} />
      )}
      {value !== undefined &&
        (value.makes.length === 0 ? (
          <EmptyState picture="needle" action={null}>
            No make has its bench time yet. Work with the row reader, or type the time when you log
            a make, and the pace becomes your own.
          </EmptyState>
        ) : (
          <TimedMakes makes={value.makes} format={format} onLeaveOut={leaveOut} />
        ))}
    </Room>
  )
}

function fromWords(sessions: number, counted: (count: number, one: string) => string): string {
  return sessions === 0
    ? 'No leftover measured yet'
    : `From ${counted(sessions, 'leftover')} measured`
}
