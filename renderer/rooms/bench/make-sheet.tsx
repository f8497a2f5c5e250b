import { useState } from 'react'
import type { CallInput } from '../../../shared-core/contract/calls.ts'
import { go } from '../../app/place.ts'
import { useAct } from '../../app/use-act.ts'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { DateInput } from '../../ui/date-input.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { Picker } from '../../ui/picker.tsx'
import { QuantityInput } from '../../ui/quantity-input.tsx'
import { Select } from '../../ui/select.tsx'
import { SideSheet } from '../../ui/side-sheet.tsx'
import { parseUnits } from '../parse-units.ts'
import { BenchTime } from './bench-time.tsx'
import { OrderChoice, useOrderLine } from './order-choice.tsx'
import { PickList } from './pick-list.tsx'

/** What is known already when a make is logged: nothing, or an order's line. */
export type MakeStart = Readonly<{
  designId?: string
  colourwayId?: string
  orderLineId?: string
  units?: number
}>

/** Logs finished units: what leaves which drawer is shown before anything is written. */
export function MakeSheet({ start, onClose }: Readonly<{ start: MakeStart; onClose: () => void }>) {
  const format = useFormat()
  const [designId, setDesign] = useState(start.designId ?? null)
  const [colourwayId, setColourway] = useState(start.colourwayId ?? null)
  const [units, setUnits] = useState<readonly [string, number | undefined]>([
    String(start.units ?? 1),
    start.units ?? 1,
  ])
  const [placeId, setPlace] = useState<string>()
  const [madeOn, setMadeOn] = useState(format.today)
  const [benchS, setBenchS] = useState<number>()
  const designs = useCall('designs.list', {}).value?.designs ?? []
  const design = useCall('designs.read', designId === null ? null : { id: designId }).value
  const shop = useCall('workshop.read', {}).value
  const colourway = colourwayId ?? (design?.id === designId ? design?.colourways[0]?.id : undefined)
  const place = placeId ?? shop?.places[0]?.id
  const asked =
    designId === null || colourway === undefined ? undefined : { designId, colourwayId: colourway }
  const order = useOrderLine(start, asked)
  const request =
    asked === undefined || !units[1] || order.isWaiting
      ? null
      : { ...asked, units: units[1], ...order.given }
  const plan = useCall('makes.plan', request)
  const finish = useAct('makes.finish', {
    said: ({ pieces }) => `Made ${pieces.length}: ${pieces.map(({ code }) => code).join(', ')}`,
  })
  const isReady = request !== null && place !== undefined && plan.value?.faults.length === 0
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
          disabled={!isReady || plan.isWaiting}
          onClick={() => request !== null && place !== undefined && void submit(request, place)}
        >
          {units[1] === undefined
            ? 'Made'
            : `Made ${format.counted(units[1], design?.body.unitName ?? 'unit')}`}
        </Button>
      }
    >
      {start.designId === undefined && (
        <Picker
          label="Design"
          value={designId}
          options={designs.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={(id) => {
            setDesign(id)
            setColourway(null)
          }}
        />
      )}
      {start.designId !== undefined && <p className="bench-design">{design?.name}</p>}
      {design !== undefined && (
        <Select
          label="Colourway"
          value={colourway ?? null}
          disabled={start.orderLineId !== undefined}
          options={design.colourways.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={setColourway}
        />
      )}
      <OrderChoice order={order} />
      <div className="bench-pair">
        <QuantityInput
          label="How many"
          text={units[0]}
          parse={(text) => parseUnits(text, format)}
          onText={(text, value) => setUnits([text, value])}
        />
        <Select
          label="They go to"
          value={place ?? null}
          options={(shop?.places ?? []).map(({ id, name }) => ({ value: id, label: name }))}
          onChange={setPlace}
        />
        <DateInput label="Made on" today={format.today} value={madeOn} onChange={setMadeOn} />
        <BenchTime decimal={format.decimal} onTime={setBenchS} />
      </div>
      {finish.refusal !== undefined && <RefusalNotice refusal={finish.refusal} />}
      {plan.refusal !== undefined && <RefusalNotice refusal={plan.refusal} />}
      {plan.value !== undefined && <PickList plan={plan.value} format={format} />}
    </SideSheet>
  )
}
