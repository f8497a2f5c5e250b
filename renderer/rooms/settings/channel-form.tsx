import { useState } from 'react'
import { parseMoney } from '../../../shared-core/units/parse-money.ts'
import { percentOf } from '../../../shared-core/units/ratio.ts'
import { placeRefusal } from '../../app/place-refusal.ts'
import { useAct } from '../../app/use-act.ts'
import { useFormat } from '../../app/use-format.ts'
import { Checkbox } from '../../ui/checkbox.tsx'
import { FormSheet } from '../../ui/form-sheet.tsx'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import { Select } from '../../ui/select.tsx'
import { TextInput } from '../../ui/text-input.tsx'
import { parsePercentUpTo } from '../parse-percent-up-to.ts'
import { channelKindOptions } from './channel-words.ts'
import { FigureField } from './figure-field.tsx'
import type { Channel } from './settings-types.ts'

type Fields = Omit<Channel, 'id'>
type PercentKey = 'feePercent' | 'paymentPercent' | 'taxPercent'
type AmountKey = 'feeFixedMinor' | 'paymentFixedMinor'

const blank: Fields = {
  name: '',
  kind: 'market',
  feePercent: '0',
  feeFixedMinor: 0,
  paymentPercent: '0',
  paymentFixedMinor: 0,
  feesOn: 'gross',
  taxPercent: '0',
  taxIncluded: true,
}

/** A channel's name, fees and tax. */
export function ChannelForm({
  channel,
  onClose,
}: Readonly<{ channel: Channel | undefined; onClose: () => void }>) {
  const [fields, setFields] = useState<Fields>(() => {
    if (channel === undefined) return blank
    const { id: _, ...rest } = channel
    return rest
  })
  const save = useAct('channel.save', { said: () => `Saved ${fields.name}`, of: fields })
  const { at, above } = placeRefusal(save.refusal, [
    'channel.name',
    'channel.kind',
    'channel.feePercent',
    'channel.feeFixedMinor',
    'channel.paymentPercent',
    'channel.paymentFixedMinor',
    'channel.taxPercent',
  ])
  function take(key: PercentKey | AmountKey, value: string | number | undefined) {
    if (value !== undefined) setFields({ ...fields, [key]: value })
  }
  const figures = {
    fields,
    errorAt: (name: PercentKey | AmountKey) => at(`channel.${name}`),
    onTake: take,
  }
  async function submit() {
    const id = channel === undefined ? {} : { id: channel.id }
    if ((await save.act({ channel: { ...fields, ...id } })).ok) onClose()
  }
  return (
    <FormSheet
      title={channel === undefined ? 'New channel' : `Change ${channel.name}`}
      above={above}
      isBusy={save.isBusy}
      onSave={() => void submit()}
      onClose={onClose}
    >
      <TextInput
        label="Name"
        error={at('channel.name')}
        missing="Give it a name, such as that of the shop or the market."
        longest={120}
        value={fields.name}
        onChange={(name) => setFields({ ...fields, name })}
      />
      <Select
        label="Kind"
        error={at('channel.kind')}
        value={fields.kind}
        options={channelKindOptions}
        onChange={(kind) => setFields({ ...fields, kind })}
      />
      <div className="settings-pair">
        <PercentField label="It keeps" name="feePercent" {...figures} />
        <AmountField label="and each time" name="feeFixedMinor" {...figures} />
        <PercentField label="Payment costs" name="paymentPercent" {...figures} />
        <AmountField label="and each payment" name="paymentFixedMinor" {...figures} />
      </div>
      <SegmentedChoice
        label="Fees are taken on the price"
        value={fields.feesOn}
        options={[
          { value: 'gross', label: 'with tax' },
          { value: 'net', label: 'without tax' },
        ]}
        onChange={(feesOn) => setFields({ ...fields, feesOn })}
      />
      <PercentField label="Tax" name="taxPercent" {...figures} />
      <Checkbox
        label="The price a buyer sees contains the tax"
        checked={fields.taxIncluded}
        onChange={(taxIncluded) => setFields({ ...fields, taxIncluded })}
      />
      <p className="quiet">
        Rates are yours to enter: local law and a licensed adviser decide which apply.
      </p>
    </FormSheet>
  )
}

type FieldProps<K> = Readonly<{
  label: string
  name: K
  fields: Fields
  errorAt: (name: PercentKey | AmountKey) => string | undefined
  onTake: (key: PercentKey | AmountKey, value: string | number | undefined) => void
}>

function PercentField({ label, name, fields, errorAt, onTake }: FieldProps<PercentKey>) {
  const format = useFormat()
  return (
    <FigureField
      label={label}
      error={errorAt(name)}
      written={format.percent(fields[name])}
      parse={(typed) => parsePercentUpTo(100, typed, format)}
      onRead={(value) => onTake(name, value === undefined ? undefined : percentOf(value))}
    />
  )
}

function AmountField({ label, name, fields, errorAt, onTake }: FieldProps<AmountKey>) {
  const format = useFormat()
  const { currency, decimal } = format
  return (
    <FigureField
      label={label}
      error={errorAt(name)}
      written={format.money(fields[name])}
      parse={(typed) => parseMoney(typed, { currency, decimal })}
      onRead={(value) => onTake(name, value?.amountMinor)}
    />
  )
}
