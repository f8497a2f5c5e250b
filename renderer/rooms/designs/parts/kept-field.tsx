import { type FocusEvent, type KeyboardEvent, type ReactNode, useState } from 'react'
import type { ParseResult } from '../../../../shared-core/units/parse-options.ts'
import { withinBounds } from '../../../../shared-core/units/within-bounds.ts'
import { QuantityInput } from '../../../ui/quantity-input.tsx'
import { TextInput } from '../../../ui/text-input.tsx'
import { tooLong } from '../../../ui/too-long.ts'

/** A text that changes its design once it is done: on leaving the field or by Enter. Escape takes the typing back. */
export function KeptText({
  label,
  value,
  onKeep,
  refuse,
  onTry,
  longest,
  ...rest
}: Readonly<{
  label: string
  value: string
  onKeep: (value: string) => void
  /** A whole sentence for what cannot be kept. */
  refuse?: (value: string) => string | undefined
  /** Told at every key, for what follows the typing; `undefined` when it is over. */
  onTry?: (value: string | undefined) => void
  hint?: ReactNode
  labelHidden?: boolean
  longest?: number
  placeholder?: string
}>) {
  const [typed, setTyped] = useState<string>()
  const text = typed ?? value
  const fault = typed === undefined ? undefined : (tooLong(typed, longest) ?? refuse?.(typed))
  function end(keeps: boolean) {
    const isKept = keeps && typed !== undefined && fault === undefined
    if (isKept && typed.trim() !== value) onKeep(typed.trim())
    // What cannot be kept stays to be mended; leaving by Escape drops it.
    if (isKept || !keeps) setTyped(undefined)
    if (isKept || !keeps) onTry?.(undefined)
  }
  return (
    <Kept onEnd={end} takesBack={typed !== undefined}>
      <TextInput
        {...rest}
        label={label}
        value={text}
        error={fault}
        onChange={(next) => {
          setTyped(next)
          onTry?.(next)
        }}
      />
    </Kept>
  )
}

/**
 * A figure that changes its design once it is done, or `asTyped` at every key that can be read. Empty
 * keeps `undefined` where that is allowed.
 */
export function KeptFigure<T extends number>({
  label,
  value,
  write,
  parse,
  range,
  optional = false,
  asTyped = false,
  onKeep,
  ...rest
}: Readonly<{
  label: string
  value: number | undefined
  write: (value: number) => string
  parse: (text: string) => ParseResult<T>
  /** The least and the most that is accepted. */
  range: readonly [number, number]
  optional?: boolean
  asTyped?: boolean
  onKeep: (value: number | undefined) => void
  hint?: ReactNode
  labelHidden?: boolean
}>) {
  const [typed, setTyped] = useState<string>()
  const text = typed ?? (value === undefined ? '' : write(value))
  const [least, most] = range
  const bounded = (words: string) =>
    withinBounds(parse(words), words, { least, most, of: Number, write })
  const isMissing = typed?.trim() === '' && !optional
  function found(words: string): Readonly<{ value: T | undefined }> | undefined {
    if (words.trim() === '') return optional ? { value: undefined } : undefined
    const read = bounded(words)
    return read.ok ? { value: read.value.value } : undefined
  }
  function keep(words: string | undefined): boolean {
    const kept = words === undefined ? undefined : found(words)
    if (kept !== undefined && kept.value !== value) onKeep(kept.value)
    return kept !== undefined
  }
  function type(words: string) {
    setTyped(words)
    if (asTyped) keep(words)
  }
  function end(keeps: boolean) {
    if (!keeps || keep(typed)) setTyped(undefined)
  }
  return (
    <Kept onEnd={end} takesBack={typed !== undefined && !asTyped}>
      <QuantityInput
        {...rest}
        label={label}
        optional={optional}
        text={text}
        parse={bounded}
        error={isMissing ? `Type a number from ${write(least)} to ${write(most)}.` : undefined}
        onText={type}
      />
    </Kept>
  )
}

/** Tells when a field is done: left or Enter keeps it, Escape does not. */
function Kept({
  onEnd,
  takesBack,
  children,
}: Readonly<{
  onEnd: (keeps: boolean) => void
  /** Whether Escape has typing to take back; otherwise it belongs to the sheet around the field. */
  takesBack: boolean
  children: ReactNode
}>) {
  function onKeyDown(event: KeyboardEvent) {
    if (event.key === 'Enter') onEnd(true)
    if (event.key !== 'Escape' || !takesBack) return
    event.stopPropagation()
    onEnd(false)
  }
  function onBlur({ currentTarget, relatedTarget }: FocusEvent) {
    if (!currentTarget.contains(relatedTarget)) onEnd(true)
  }
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: what comes up from the field within is heard here
    <div className="kept-field" onKeyDown={onKeyDown} onBlur={onBlur}>
      {children}
    </div>
  )
}
