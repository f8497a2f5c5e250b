import { useState } from 'react'
import { go } from '../../app/place.ts'
import { useAct } from '../../app/use-act.ts'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { FigureList } from '../../ui/figure-list.tsx'
import { Notice, RefusalNotice } from '../../ui/notice.tsx'
import { SideSheet } from '../../ui/side-sheet.tsx'
import { LotChoices } from './lot-choices.tsx'
import { ColourwayField, DesignField, UnitsField } from './make-fields.tsx'
import type { MakeStart } from './make-start.ts'
import { OrderChoice } from './order-choice.tsx'
import { PickTicks } from './pick-ticks.tsx'
import { keepTicked } from './ticked-lots.ts'
import { TubesBefore } from './tubes-before.tsx'
import { useMakeChoice } from './use-make-choice.ts'

const NO_WEIGHTS: Readonly<Record<string, number>> = {}

/** Begins work at the bench: what, how many, from which lots; the list of what to fetch. */
export function StartSheet({
  start,
  onClose,
}: Readonly<{ start: MakeStart; onClose: () => void }>) {
  const format = useFormat()
  const choice = useMakeChoice(start)
  const { design, units, order, unitName } = choice
  const [lots, setLots] = useState<Readonly<Record<string, string>>>({})
  const [before, setBefore] = useState(NO_WEIGHTS)
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set())
  const request = choice.request && { ...choice.request, lots }
  const plan = useCall('makes.plan', request)
  const begin = useAct('bench.begin', {
    said: () => `Began ${design?.name ?? 'the work'}`,
    of: [choice.designId, choice.colourwayId, units, lots, before],
  })
  const faults = plan.value?.faults ?? []
  const forgetLots = () => setLots({})
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
          disabled={
            choice.isLooking || (request !== null && (plan.isWaiting || plan.refusal !== undefined))
          }
          onClick={() => void submit()}
        >
          {units[1] ? `Begin ${format.counted(units[1], unitName)}` : 'Begin'}
        </Button>
      }
    >
      <DesignField choice={choice} onOther={forgetLots} />
      <div className="bench-pair">
        <ColourwayField choice={choice} onOther={forgetLots} />
        <UnitsField choice={choice} />
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
