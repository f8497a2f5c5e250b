import { useId } from 'react'
import './segmented-choice.css'

/** A choice among a few, all seen at once; arrow keys move it. */
export function SegmentedChoice<V extends string>({
  label,
  value,
  options,
  onChange,
  labelHidden = false,
}: Readonly<{
  label: string
  value: V
  options: readonly Readonly<{ value: V; label: string; disabled?: boolean }>[]
  onChange: (value: V) => void
  labelHidden?: boolean
}>) {
  const name = useId()
  return (
    <fieldset className="segments">
      <legend className={labelHidden ? 'unseen' : 'field-label'}>{label}</legend>
      <div className="segments-row">
        {options.map((option) => (
          <label key={option.value} className="segment">
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={option.value === value}
              disabled={option.disabled}
              onChange={() => onChange(option.value)}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
