import { useState } from 'react'
import { formatNumber } from '../../../../shared-core/units/format-number.ts'
import { useFormat } from '../../../app/use-format.ts'
import { Field } from '../../../ui/field.tsx'

type NumberSettingProps = Readonly<{
  label: string
  unit: string
  value: number
  /** Least and most that is taken. */
  range: readonly [number, number]
  hint?: string
  onValue: (value: number) => void
}>

/** One number that is set as it is typed; a comma may stand for the point. */
export function NumberSetting({ label, unit, value, range, hint, onValue }: NumberSettingProps) {
  const { decimal } = useFormat()
  const write = (number: number) => formatNumber(String(number), decimal)
  const [text, setText] = useState(write(value))
  const [least, most] = range
  const typed = Number(text.trim().replace(',', '.'))
  const isFit = text.trim() !== '' && typed >= least && typed <= most
  return (
    <Field
      label={label}
      unit={unit}
      hint={hint}
      error={
        isFit
          ? undefined
          : `Expected a number from ${write(least)} to ${write(most)}. ${write(value)} stays until then.`
      }
    >
      {(control) => (
        <input
          {...control}
          className="input reader-number"
          inputMode="decimal"
          value={text}
          onChange={(event) => {
            setText(event.target.value)
            const next = Number(event.target.value.trim().replace(',', '.'))
            if (event.target.value.trim() !== '' && next >= least && next <= most) onValue(next)
          }}
        />
      )}
    </Field>
  )
}
