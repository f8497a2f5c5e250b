import type { Ref } from 'react'
import type { ParseResult } from '../../shared-core/units/parse-options.ts'
import { Field, type FieldSays } from './field.tsx'
import './quantity-input.css'
import { refusalWords } from './refusal-words.ts'

type QuantityInputProps<T> = Omit<FieldSays, 'error' | 'missing'> &
  Readonly<{
    /** The text as typed: kept by the caller, so that nothing typed is ever lost. */
    text: string
    /** Called at every key with the text and the value read from it (`undefined` while refused or empty). */
    onText: (text: string, value: T | undefined) => void
    /** A parser of the core with its options bound, such as `(text) => parseMass(text, { decimal })`. */
    parse: (text: string) => ParseResult<T>
    unit?: string
    /** A refusal from elsewhere (the service), shown instead of the reading. */
    error?: string | undefined
    /**
     * What is said of a figure that was left empty, once the rest is to be kept. A figure is needed unless
     * it is `optional`, or `null` is given here where something around it says that it may stay empty.
     */
    missing?: string | null | undefined
    disabled?: boolean
    autoFocus?: boolean
    ref?: Ref<HTMLInputElement>
  }>

/** A figure with its unit, typed as people type; shows what was understood, or why not. Empty is refused once the rest is to be kept. */
export function QuantityInput<T>({
  label,
  hint,
  optional,
  labelHidden,
  text,
  onText,
  parse,
  unit,
  error,
  disabled,
  missing = optional === true || disabled === true ? null : GIVE_IT,
  autoFocus,
  ref,
}: QuantityInputProps<T>) {
  const result = text.trim() === '' ? undefined : parse(text)
  const refusal = result?.ok === false ? refusalWords(result.error) : undefined
  const understood = result?.ok === true ? result.value.understood : ''
  const lacks = text.trim() === '' ? (missing ?? undefined) : undefined
  return (
    <Field
      {...{ label, hint, optional, labelHidden, unit }}
      error={error ?? refusal}
      missing={lacks}
    >
      {(control) => (
        <>
          <input
            {...control}
            ref={ref}
            className="input quantity-input"
            inputMode="decimal"
            autoComplete="off"
            disabled={disabled}
            // biome-ignore lint/a11y/noAutofocus: the caller asks for it where a side sheet opens on this field
            autoFocus={autoFocus}
            value={text}
            onChange={(event) => onText(event.target.value, readValue(event.target.value, parse))}
          />
          <output className="quantity-understood" htmlFor={control.id}>
            {understood !== '' && understood !== text.trim() ? `= ${understood}` : ''}
          </output>
        </>
      )}
    </Field>
  )
}

const GIVE_IT = 'This figure is still missing. Type it here.'

function readValue<T>(text: string, parse: (text: string) => ParseResult<T>): T | undefined {
  if (text.trim() === '') return undefined
  const result = parse(text)
  return result.ok ? result.value.value : undefined
}
