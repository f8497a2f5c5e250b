import { useState } from 'react'
import { go } from '../../app/place.ts'
import { useAct } from '../../app/use-act.ts'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { FigureList } from '../../ui/figure-list.tsx'
import { Notice, RefusalNotice } from '../../ui/notice.tsx'
import { Picker } from '../../ui/picker.tsx'
import { QuantityInput } from '../../ui/quantity-input.tsx'
import { Select } from '../../ui/select.tsx'
import { SideSheet } from '../../ui/side-sheet.tsx'
import { parseUnits } from '../parse-units.ts'
import { LotChoices } from './lot-choices.tsx'
import type { MakeStart } from './make-sheet.tsx'
import { OrderChoice, useOrderLine } from './order-choice.tsx'
import { PickTicks } from './pick-ticks.tsx'
import { keepTicked } from './ticked-lots.ts'
import { TubesBefore } from './tubes-before.tsx'

const NO_WEIGHTS: Readonly<Record<string, number>> = {}

/** Begins work at the bench: what, how many, from which lots; the list of what to fetch. */
export function StartSheet({
  start,
  onClose,
}: Readonly<{ start: MakeStart; onClose: () => void }>) {
  const format = useFormat()
  const [designId, setDesign] = useState(start.designId ?? null)
  const [colourwayId, setColourway] = useState(start.colourwayId ?? null)
  const [units, setUnits] = useState<readonly [string, number | undefined]>([
    String(start.units ?? 1),
    start.units ?? 1,
  ])
  const [lots, setLots] = useState<Readonly<Record<string, string>>>({})
  const [before, setBefore] = useState(NO_WEIGHTS)
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set())
  const designs = useCall('designs.list', {}).value?.designs ?? []
  const design = useCall('designs.read', designId === null ? null : { id: designId }).value
  const colourway = colourwayId ?? (design?.id === designId ? design?.colourways[0]?.id : undefined)
  const asked =
    designId === null || colourway === undefined ? undefined : { designId, colourwayId: colourway }
  const order = useOrderLine(start, asked)
  const request =
    asked === undefined || !units[1] || order.isWaiting
      ? null
      : { ...asked, units: units[1], lots, ...order.given }
  const plan = useCall('makes.plan', request)
  const begin = useAct('bench.begin', { said: () => `Began ${design?.name ?? 'the work'}` })
  const unitName = design?.body.unitName ?? 'unit'
  const faults = plan.value?.faults ?? []
  async function submit() {
    if (request === null) return
    const answer = await begin.act({ ...request, before, begunOn: format.today })
    if (!answer.ok) return
    keepTicked(answer.value.id, ticked)
    onClose()
    go({ room: 'bench', id: answer.value.id })
  }
  return (
    <SideSheet
      open
      wide
      title="Start a piece"
      onClose={onClose}
      actions={
        <Button
          kind="primary"
          icon="thread"
          busy={begin.isBusy}
          disabled={request === null || plan.isWaiting || plan.refusal !== undefined}
          onClick={() => void submit()}
        >
          {units[1] ? `Begin ${format.counted(units[1], unitName)}` : 'Begin'}
        </Button>
      }
    >
      {start.designId === undefined ? (
        <Picker
          label="Design"
          value={designId}
          options={designs.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={(id) => {
            setDesign(id)
            setColourway(null)
            setLots({})
          }}
        />
      ) : (
        <p className="bench-design">{design?.name}</p>
      )}
      <div className="bench-pair">
        {design !== undefined && (
          <Select
            label="Colourway"
            value={colourway ?? null}
            disabled={start.orderLineId !== undefined}
            options={design.colourways.map(({ id, name }) => ({ value: id, label: name }))}
            onChange={(id) => {
              setColourway(id)
              setLots({})
            }}
          />
        )}
        <QuantityInput
          label="How many"
          text={units[0]}
          parse={(text) => parseUnits(text, format)}
          onText={(text, value) => setUnits([text, value])}
        />
      </div>
      <OrderChoice order={order} />
      {begin.refusal !== undefined && <RefusalNotice refusal={begin.refusal} />}
      {plan.refusal !== undefined && <RefusalNotice refusal={plan.refusal} />}
      {faults.map((fault) => (
        <Notice key={`${fault.code} ${fault.field}`} kind="attention" title={fault.message}>
          {`${fault.next} You can begin all the same; it must be there by the end.`}
        </Notice>
      ))}
      {plan.value !== undefined && request !== null && (
        <>
          <FigureList
            row
            figures={[
              {
                label: 'Takes about',
                value: format.duration(plan.value.labourS.value),
                basis: plan.value.labourS.basis,
                range: format.range(plan.value.labourS, format.duration),
              },
            ]}
          />
          <LotChoices choices={plan.value.choices} lots={lots} format={format} onLots={setLots} />
          {plan.value.draws.length > 0 && (
            <PickTicks draws={plan.value.draws} format={format} heading="h3" onTicked={setTicked} />
          )}
          <TubesBefore
            draws={plan.value.draws}
            decimal={format.decimal}
            before={before}
            onBefore={setBefore}
          />
        </>
      )}
    </SideSheet>
  )
}
