import { useState } from 'react'
import { Button } from '../ui/button.tsx'
import { RefusalNotice } from '../ui/notice.tsx'
import { Picker } from '../ui/picker.tsx'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { TextInput } from '../ui/text-input.tsx'
import { currencies } from './currencies.ts'
import { FirstPicture } from './first-picture.tsx'
import { placeRefusal } from './place-refusal.ts'
import { todayDate } from './today.ts'
import { useAct } from './use-act.ts'
import { useSayInteractive } from './use-say-interactive.ts'
import './first-choice.css'

type Beginning = 'sample' | 'empty'

/**
 * The first start: whose workshop this is, and whether to begin with the sample or with nothing.
 *
 * Until `isSeen` it stands ready and hidden.
 */
export function FirstChoice({ isSeen }: Readonly<{ isSeen: boolean }>) {
  useSayInteractive(isSeen)
  const [name, setName] = useState('')
  const [currency, setCurrency] = useState('EUR')
  const [decimalMark, setDecimalMark] = useState<',' | '.'>('.')
  const { act, isBusy, refusal } = useAct('workshop.begin', { of: [name, currency, decimalMark] })
  const { at, above } = placeRefusal(refusal, ['name', 'currency'])
  const [chosen, setChosen] = useState<Beginning>()

  async function begin(beginWith: Beginning): Promise<void> {
    setChosen(beginWith)
    const ownName = name.trim() || (beginWith === 'sample' ? 'Saltmarsh Beadworks' : '')
    await act({
      with: beginWith,
      name: ownName,
      currency,
      decimalMark,
      today: todayDate(),
    })
  }

  return (
    <main className="first" hidden={!isSeen}>
      <FirstPicture />
      <form className="first-form" onSubmit={(event) => event.preventDefault()}>
        <div>
          <h1>Tallystrand</h1>
          <p className="first-lead">
            From the chart to the count, the stock, the order, the bench, the shelf and the money.
            Everything stays on this machine.
          </p>
        </div>
        <TextInput
          label="Your workshop’s name"
          hint="It stands on tags and invoices. It can be changed later."
          value={name}
          onChange={setName}
          longest={120}
          error={at('name')}
          missing="There is no name yet. Any name will do; it can be changed later."
        />
        <div className="first-pair">
          <Picker
            label="Currency"
            error={at('currency')}
            hint="Cannot be changed later."
            value={currency}
            options={currencies}
            onChange={(code) => code !== null && setCurrency(code)}
          />
          <SegmentedChoice
            label="Numbers are written"
            value={decimalMark}
            options={[
              { value: '.', label: '12.5 g' },
              { value: ',', label: '12,5 g' },
            ]}
            onChange={setDecimalMark}
          />
        </div>
        {above !== undefined && <RefusalNotice refusal={above} />}
        <div className="first-ways">
          <Button
            kind="primary"
            busy={isBusy && chosen === 'empty'}
            onClick={() => void begin('empty')}
          >
            Begin with empty drawers
          </Button>
          <Button busy={isBusy && chosen === 'sample'} onClick={() => void begin('sample')}>
            Look round with the Saltmarsh sample
          </Button>
        </div>
        <p className="field-hint">
          The sample is an invented two-person workshop with eight designs, full drawers and open
          orders, to try everything on.
        </p>
      </form>
    </main>
  )
}
