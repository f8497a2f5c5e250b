import { useState } from 'react'
import type { CallInput, CallOutput } from '../../../../shared-core/contract/calls.ts'
import type { Format } from '../../../app/format.ts'
import { go, hrefTo } from '../../../app/place.ts'
import { placeRefusal } from '../../../app/place-refusal.ts'
import { Room } from '../../../app/room.tsx'
import { useAct } from '../../../app/use-act.ts'
import { useCall } from '../../../app/use-call.ts'
import { Button } from '../../../ui/button.tsx'
import { DateInput } from '../../../ui/date-input.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { Select } from '../../../ui/select.tsx'
import { NoteInput } from '../../note-input.tsx'
import { bookingWords } from './booking-words.ts'
import {
  type BenchRead,
  finishRequest,
  firstDraft,
  hasUnread,
  type Reckoned,
} from './finish-draft.ts'
import { FinishFields } from './finish-fields.tsx'
import { PlannedActual } from './planned-actual.tsx'

type Places = CallOutput<'workshop.read'>['places']

/** Faults that stand beside their own field; all others stand above the button. */
const AT_FIELD = /^(units|threadLeftMm|weights\.\d+\.afterMg)$/

/** The desk where work ends: what it came to, beside the plan, and what will be booked before it is. */
export function FinishDesk({
  read,
  places,
  format,
}: Readonly<{ read: BenchRead; places: Places; format: Format }>) {
  const { work } = read
  const [draft, setDraft] = useState(() => firstDraft(read, format))
  const [placeId, setPlace] = useState(places[0]?.id ?? '')
  const [madeOn, setMadeOn] = useState<string>(format.today)
  const [note, setNote] = useState('')
  const request = hasUnread(draft) ? null : finishRequest(work.id, draft)
  const reckoned = useCall('bench.reckon', request)
  const finish = useAct('bench.finish', {
    said: ({ pieces }) => `Made ${pieces.length}: ${pieces.map(({ code }) => code).join(', ')}`,
    of: [draft, placeId, madeOn, note],
  })
  const { at, above } = placeRefusal(finish.refusal, ['placeId', 'madeOn', 'note'])
  const faults = [
    ...(reckoned.value?.faults ?? []),
    ...(reckoned.refusal === undefined ? [] : [reckoned.refusal]),
  ]
  const elsewhere = faults.filter(({ field }) => field === undefined || !AT_FIELD.test(field))
  const isReady = request !== null && !reckoned.isWaiting && reckoned.value !== undefined
  async function submit(ready: CallInput<'bench.reckon'>) {
    const answer = await finish.act({ ...ready, placeId, madeOn, note })
    if (answer.ok) go({ room: 'shelf' })
  }
  return (
    <Room
      title={`Finish ${work.designName}`}
      note={work.colourwayName}
      back={{ href: hrefTo({ room: 'bench', id: work.id }), label: 'Back to the work' }}
      aside={reckoned.value && <PlannedActual reckoned={reckoned.value} format={format} />}
    >
      <form className="bench-finish" onSubmit={(event) => event.preventDefault()}>
        <FinishFields
          read={read}
          draft={draft}
          onDraft={setDraft}
          faultAt={(field) => faults.find((fault) => fault.field === field)}
          decimal={format.decimal}
        >
          <Select
            label="They go to"
            error={at('placeId')}
            missing="Choose where they go. Places are entered in Settings."
            value={placeId}
            options={places.map(({ id, name }) => ({ value: id, label: name }))}
            onChange={setPlace}
          />
          <DateInput
            label="Made on"
            error={at('madeOn')}
            today={format.today}
            value={madeOn}
            onChange={setMadeOn}
          />
        </FinishFields>
        <NoteInput error={at('note')} rows={2} value={note} onChange={setNote} />
        {elsewhere.map((fault) => (
          <RefusalNotice key={`${fault.code} ${fault.field}`} refusal={fault} />
        ))}
        {above !== undefined && <RefusalNotice refusal={above} />}
        {isReady && faults.length === 0 && reckoned.value !== undefined && (
          <Booking
            reckoned={reckoned.value}
            sentences={bookingWords(
              reckoned.value.lines,
              {
                count: request.units,
                unitName: work.unitName,
                place: places.find(({ id }) => id === placeId)?.name ?? '',
                orderCode: work.order?.code ?? null,
              },
              format,
            )}
            format={format}
          />
        )}
        <div className="bench-submit">
          <Button
            kind="primary"
            icon="check"
            busy={finish.isBusy}
            disabled={(request !== null && reckoned.isWaiting) || elsewhere.length > 0}
            onClick={() => isReady && void submit(request)}
          >
            {`Finish ${format.counted(draft.units.value ?? 0, work.unitName)}`}
          </Button>
        </div>
      </form>
    </Room>
  )
}

function Booking({
  reckoned: { costMinor, plannedCostMinor },
  sentences,
  format,
}: Readonly<{ reckoned: Reckoned; sentences: readonly string[]; format: Format }>) {
  const off = costMinor - plannedCostMinor
  return (
    <section className="bench-booking" aria-labelledby="bench-booking">
      <h2 id="bench-booking" className="bench-head">
        What will be booked
      </h2>
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p>
        {`They cost ${format.money(costMinor)} in all`}
        {off === 0
          ? ', as planned.'
          : `, ${format.money(Math.abs(off))} ${off > 0 ? 'more' : 'less'} than planned.`}
      </p>
    </section>
  )
}
