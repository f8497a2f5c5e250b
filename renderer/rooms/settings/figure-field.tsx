import { type ReactNode, useState } from 'react'
import type { ParseResult } from '../../../shared-core/units/parse-options.ts'
import { QuantityInput } from '../../ui/quantity-input.tsx'

/** A figure of a form that keeps its own text: it begins as `written`, and tells what is read at every key. */
export function FigureField<T>({
  label,
  hint,
  error,
  written,
  parse,
  onRead,
}: Readonly<{
  label: string
  hint?: ReactNode
  error?: string | undefined
  written: string
  parse: (text: string) => ParseResult<T>
  /** `undefined` while it cannot be read. */
  onRead: (value: T | undefined) => void
}>) {
  const [text, setText] = useState(written)
  return (
    <QuantityInput
      label={label}
      hint={hint}
      error={error}
      text={text}
      parse={parse}
      onText={(typed, value) => {
        setText(typed)
        onRead(value)
      }}
    />
  )
}
