import { useState } from 'react'
import type { CallInput } from '../../../shared-core/contract/calls.ts'
import { go } from '../../app/place.ts'
import { placeRefusal } from '../../app/place-refusal.ts'
import { useAct } from '../../app/use-act.ts'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { DateInput } from '../../ui/date-input.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { Select } from '../../ui/select.tsx'
import { SideSheet } from '../../ui/side-sheet.tsx'
import { BenchTime } from './bench-time.tsx'
import { ColourwayField, DesignField, UnitsField } from './make-fields.tsx'
import type { MakeStart } from './make-start.ts'
import { OrderChoice } from './order-choice.tsx'
import { PickList } from './pick-list.tsx'
import { useMakeChoice } from './use-make-choice.ts'

/** Logs finished units: what leaves which drawer is shown before anything is written. */
export function MakeSheet({ start, onClose }: Readonly<{ start: MakeStart; onClose: () => void }>) {
  const format = useFormat()
  const choice = useMakeChoice(start)
  const { units, order, unitName, request } = choice
  const [placeId, setPlace] = useState<string>()
  const [madeOn, setMadeOn] = useState(format.today)
  const [benchS, setBenchS] = useState<number>()
  const shop = useCall('workshop.read', {}).value
  const place = placeId ?? shop?.places[0]?.id
  const plan = useCall('makes.plan', request)
  const finish = useAct('makes.finish', {
    said: ({ pieces }) => `Made ${pieces.length}: ${pieces.map(({ code }) => code).join(', ')}`,
    of: [choice.designId, choice.colourwayId, units, placeId, madeOn, benchS],
  })
  const { at, above } = placeRefusal(finish.refusal, ['placeId', 'madeOn'])
  const isPlanned = !plan.isWaiting && plan.value?.faults.length === 0
  async function submit(ready: CallInput<'makes.plan'>, at: string) {
    const time = benchS === undefined ? {} : { benchS }
    const answer = await finish.act({ ...ready, ...time, placeId: at, madeOn, note: '' })
    if (!answer.ok) return
    onClose()
    go({ room: 'shelf' })
  }
  return (
    <SideSheet
      open
      wide
      title="Log a make"
      onClose={onClose}
      actions={
        <Button
          kind="primary"
          icon="check"
          busy={finish.isBusy}
          disabled={choice.isLooking || (request !== null && !isPlanned)}
          onClick={() => request !== null && place !== undefined && void submit(request, place)}
        >
          {units[1] === undefined ? 'Made' : `Made ${format.counted(units[1], unitName)}`}
        </Button>
      }
    >
      <DesignField choice={choice} />
      <ColourwayField choice={choice} />
      <OrderChoice order={order} />
      <div className="bench-pair">
        <UnitsField choice={choice} />
        <Select
          label="They go to"
          error={at('placeId')}
          missing="Choose where they go. Places are entered in Settings."
          value={place ?? null}
          options={(shop?.places ?? []).map(({ id, name }) => ({ value: id, label: name }))}
          onChange={setPlace}
        />
        <DateInput
          label="Made on"
          error={at('madeOn')}
          today={format.today}
          value={madeOn}
          onChange={setMadeOn}
        />
        <BenchTime decimal={format.decimal} onTime={setBenchS} />
      </div>
      {above !== undefined && <RefusalNotice refusal={above} />}
      {plan.refusal !== undefined && <RefusalNotice refusal={plan.refusal} />}
      {plan.value !== undefined && <PickList plan={plan.value} format={format} />}
    </SideSheet>
  )
}
