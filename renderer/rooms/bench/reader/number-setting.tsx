import { useState } from 'react'
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
  const [text, setText] = useState(String(value))
  const [least, most] = range
  const typed = Number(text.trim().replace(',', '.'))
  const isFit = text.trim() !== '' && typed >= least && typed <= most
  return (
    <Field
      label={label}
      unit={unit}
      hint={hint}
      error={
        isFit ? undefined : `Expected a number from ${least} to ${most}. ${value} stays until then.`
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
