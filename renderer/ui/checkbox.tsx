import { type ReactNode, useId } from 'react'
import './checkbox.css'

/** A yes or no that takes effect with the form it stands in. */
export function Checkbox({
  label,
  hint,
  checked,
  onChange,
  disabled,
}: Readonly<{
  label: ReactNode
  hint?: ReactNode
  checked: boolean
  onChange: (checked: boolean) => void
  disabled?: boolean
}>) {
  const id = useId()
  return (
    <div className="checkbox">
      <input
        id={id}
        type="checkbox"
        checked={checked}
        disabled={disabled}
        aria-describedby={hint === undefined ? undefined : `${id}-hint`}
        onChange={(event) => onChange(event.target.checked)}
      />
      <label htmlFor={id}>{label}</label>
      {hint !== undefined && (
        <div id={`${id}-hint`} className="field-hint checkbox-hint">
          {hint}
        </div>
      )}
    </div>
  )
}
