import { Select as Base } from '@base-ui/react/select'
import type { ReactNode } from 'react'
import { Field, type FieldSays } from './field.tsx'
import { Icon } from './icon.tsx'
import { Swatch, type SwatchLook } from './swatch.tsx'
import './select.css'

/** One thing to choose: its words, and a bead or a detail beside them. */
export type Option<V extends string> = Readonly<{
  value: V
  label: string
  look?: SwatchLook | null | undefined
  /** Written small after the label: `12.4 g, drawer 3`. */
  detail?: string | undefined
}>

type SelectProps<V extends string> = FieldSays &
  Readonly<{
    value: V | null
    options: readonly Option<V>[]
    onChange: (value: V) => void
    placeholder?: string
    disabled?: boolean
  }>

/** A choice from a short list. For long lists that want typing use `Picker`. */
export function Select<V extends string>({
  value,
  options,
  onChange,
  placeholder = 'Choose',
  disabled = false,
  label,
  hint,
  error,
  missing,
  optional,
  labelHidden,
}: SelectProps<V>) {
  const chosen = options.find((option) => option.value === value)
  return (
    <Field
      {...{ label, hint, error, optional, labelHidden }}
      missing={chosen ? undefined : missing}
    >
      {(control) => (
        <Base.Root<V>
          items={options.map((option) => ({ value: option.value, label: option.label }))}
          value={value}
          disabled={disabled}
          onValueChange={(next) => next !== null && onChange(next)}
        >
          <Base.Trigger {...control} className="input select" aria-label={label}>
            <span className="select-value">
              {chosen === undefined ? (
                <span className="select-placeholder">{placeholder}</span>
              ) : (
                <OptionWords option={chosen} />
              )}
            </span>
            <Icon name="down" size={16} />
          </Base.Trigger>
          <Base.Portal>
            <Base.Positioner className="list-place" sideOffset={4} alignItemWithTrigger={false}>
              <Base.Popup className="list-popup">
                <Base.List>
                  {options.map((option) => (
                    <Base.Item key={option.value} value={option.value} className="list-item">
                      <Base.ItemText className="list-text">
                        <OptionWords option={option} />
                      </Base.ItemText>
                      <Base.ItemIndicator className="list-chosen">
                        <Icon name="check" size={16} />
                      </Base.ItemIndicator>
                    </Base.Item>
                  ))}
                </Base.List>
              </Base.Popup>
            </Base.Positioner>
          </Base.Portal>
        </Base.Root>
      )}
    </Field>
  )
}

/** An option as it is written in lists and in the closed field. */
export function OptionWords({ option }: Readonly<{ option: Option<string> }>): ReactNode {
  return (
    <span className="option">
      {option.look !== undefined && <Swatch look={option.look} />}
      <span className="option-label">{option.label}</span>
      {option.detail !== undefined && <span className="option-detail">{option.detail}</span>}
    </span>
  )
}
