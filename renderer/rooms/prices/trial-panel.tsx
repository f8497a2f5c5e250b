import { useState } from 'react'
import type { PriceInputs } from '../../../shared-core/pricing/price-sheet.ts'
import { parseDuration } from '../../../shared-core/units/parse-duration.ts'
import { parseMoney } from '../../../shared-core/units/parse-money.ts'
import { parsePercent } from '../../../shared-core/units/parse-percent.ts'
import { percentOf } from '../../../shared-core/units/ratio.ts'
import type { Format } from '../../app/format.ts'
import { useAct } from '../../app/use-act.ts'
import { Button } from '../../ui/button.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { QuantityInput } from '../../ui/quantity-input.tsx'
import { MOST_MARGIN, parsePercentUpTo } from '../parse-percent-up-to.ts'
import { isTrying, type Trial, tried } from './trial.ts'

type Props = Readonly<{
  inputs: PriceInputs
  trial: Trial
  onTrial: (trial: Trial) => void
  format: Format
}>

/** What if: change a figure and every price follows; keep it for the whole workshop, or let it go. */
export function TrialPanel({ inputs, trial, onTrial, format }: Props) {
  const [round, setRound] = useState(0)
  const save = useAct('workshop.save', { said: () => 'Kept the new figures', of: trial })
  function letGo() {
    onTrial({})
    setRound(round + 1)
  }
  async function keep() {
    const { currency: _, ...workshop } = tried(inputs, trial).workshop
    if ((await save.act({ workshop })).ok) letGo()
  }
  const { labourS: _, ...kept } = trial
  const keeps = isTrying(kept)
  return (
    <section className="prices-trial" aria-label="What if">
      <Fields key={round} inputs={inputs} trial={trial} onTrial={onTrial} format={format} />
      {isTrying(trial) && (
        <div className="button-row">
          {keeps && (
            <Button kind="primary" busy={save.isBusy} onClick={() => void keep()}>
              Keep for all designs
            </Button>
          )}
          <Button kind="quiet" onClick={letGo}>
            Back to the workshop’s figures
          </Button>
        </div>
      )}
      {save.refusal !== undefined && <RefusalNotice refusal={save.refusal} />}
    </section>
  )
}

function Fields({ inputs, trial, onTrial, format }: Props) {
  const { workshop, labourS } = inputs
  const { decimal, currency } = format
  const overhead = workshop.overhead
  const [rate, setRate] = useState(format.money(workshop.hourlyRateMinor))
  const [margin, setMargin] = useState(format.percent(workshop.marginPercent))
  const [share, setShare] = useState(
    overhead.kind === 'percent-of-labour' ? format.percent(overhead.percent) : '',
  )
  const [time, setTime] = useState(format.duration(labourS.value))
  const set = (key: keyof Trial, value: string | number | undefined) => {
    const { [key]: _, ...rest } = trial
    onTrial(value === undefined ? rest : { ...rest, [key]: value })
  }
  return (
    <div className="prices-fields">
      <QuantityInput
        label="An hour of yours"
        text={rate}
        parse={(text) => parseMoney(text, { currency, decimal })}
        onText={(text, value) => {
          setRate(text)
          set('hourlyRateMinor', value?.amountMinor)
        }}
      />
      <QuantityInput
        label={`Time for one ${inputs.unitName}`}
        missing={null}
        text={time}
        parse={(text) => parseDuration(text, { decimal })}
        onText={(text, value) => {
          setTime(text)
          set('labourS', value)
        }}
      />
      <QuantityInput
        label="Margin wanted"
        text={margin}
        parse={(text) => parsePercentUpTo(MOST_MARGIN, text, format)}
        onText={(text, value) => {
          setMargin(text)
          set('marginPercent', value === undefined ? undefined : percentOf(value))
        }}
      />
      <QuantityInput
        label="Overhead on labour"
        missing={overhead.kind === 'percent-of-labour' ? undefined : null}
        text={share}
        parse={(text) => parsePercent(text, { decimal })}
        onText={(text, value) => {
          setShare(text)
          set('overheadPercent', value === undefined ? undefined : percentOf(value))
        }}
      />
    </div>
  )
}
