import type { InputHTMLAttributes, Ref } from 'react'
import { Field, type FieldSays } from './field.tsx'

type TextInputProps = FieldSays &
  Readonly<{
    value: string
    onChange: (value: string) => void
    unit?: string
    /** `date` shows the system's own date field and gives 2026-12-04. */
    type?: 'text' | 'date' | 'search'
    ref?: Ref<HTMLInputElement>
  }> &
  Pick<
    InputHTMLAttributes<HTMLInputElement>,
    'autoFocus' | 'disabled' | 'maxLength' | 'onBlur' | 'onKeyDown' | 'placeholder' | 'readOnly'
  >

/** One line of text. */
export function TextInput({
  label,
  hint,
  error,
  optional,
  labelHidden,
  unit,
  value,
  onChange,
  type = 'text',
  ...rest
}: TextInputProps) {
  return (
    <Field {...{ label, hint, error, optional, labelHidden }} unit={unit}>
      {(control) => (
        <input
          {...rest}
          {...control}
          type={type}
          className="input"
          value={value}
          autoComplete="off"
          spellCheck={false}
          onChange={(event) => onChange(event.target.value)}
        />
      )}
    </Field>
  )
}

/** Several lines of text. */
export function TextArea({
  label,
  hint,
  error,
  optional,
  labelHidden,
  value,
  onChange,
  rows = 4,
}: FieldSays & Readonly<{ value: string; onChange: (value: string) => void; rows?: number }>) {
  return (
    <Field {...{ label, hint, error, optional, labelHidden }}>
      {(control) => (
        <textarea
          {...control}
          className="input"
          rows={rows}
          value={value}
          onChange={(event) => onChange(event.target.value)}
        />
      )}
    </Field>
  )
}
