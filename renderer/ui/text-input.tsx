import type { InputHTMLAttributes, Ref } from 'react'
import { Field, type FieldSays } from './field.tsx'
import { tooLong } from './too-long.ts'

type TextInputProps = FieldSays &
  Readonly<{
    value: string
    onChange: (value: string) => void
    unit?: string
    type?: 'text' | 'search'
    /** The most characters it holds; a longer text stays as it was typed and is refused. */
    longest?: number
    ref?: Ref<HTMLInputElement>
  }> &
  Pick<
    InputHTMLAttributes<HTMLInputElement>,
    'autoFocus' | 'disabled' | 'onBlur' | 'onKeyDown' | 'placeholder' | 'readOnly'
  >

/** One line of text. */
export function TextInput({
  label,
  hint,
  error,
  missing,
  optional,
  labelHidden,
  unit,
  value,
  onChange,
  longest,
  type = 'text',
  ...rest
}: TextInputProps) {
  const fault = error ?? tooLong(value, longest)
  return (
    <Field
      {...{ label, hint, optional, labelHidden, unit }}
      error={fault}
      missing={lacking(value, missing)}
    >
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
  missing,
  optional,
  labelHidden,
  value,
  onChange,
  longest,
  rows = 4,
}: FieldSays &
  Readonly<{
    value: string
    onChange: (value: string) => void
    longest?: number
    rows?: number
  }>) {
  const fault = error ?? tooLong(value, longest)
  return (
    <Field
      {...{ label, hint, optional, labelHidden }}
      error={fault}
      missing={lacking(value, missing)}
    >
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

/** A text may be empty unless `missing` says what is lacking then. */
function lacking(text: string, missing: string | undefined): string | undefined {
  return text.trim() === '' ? missing : undefined
}
