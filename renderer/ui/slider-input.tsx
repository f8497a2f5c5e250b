import { useState } from 'react'
import { parseCount } from '../../shared-core/units/parse-count.ts'
import type { DecimalMark } from '../../shared-core/units/parse-options.ts'
import { Field } from './field.tsx'
import './slider-input.css'

/** A whole number by hand: drawn along a line, or typed beside it. */
export function SliderInput({
  label,
  value,
  min,
  max,
  decimal,
  hint,
  unit,
  onChange,
}: Readonly<{
  label: string
  value: number
  min: number
  max: number
  decimal: DecimalMark
  hint?: string
  unit?: string
  onChange: (value: number) => void
}>) {
  // What is typed stays as typed until the field is left or the line is moved.
  const [typed, setTyped] = useState<string>()
  const text = typed ?? String(value)
  const read = readWhole(text, decimal)
  const isGood = read !== undefined && read >= min && read <= max
  const isEmpty = text.trim() === ''
  const range = `Give a whole number from ${min} to ${max}.`
  const error = isGood || isEmpty ? undefined : range
  return (
    <Field
      {...{ label, error, unit }}
      missing={isEmpty ? range : undefined}
      {...(hint === undefined ? {} : { hint })}
    >
      {(control) => (
        <div className="slider">
          <input
            type="range"
            aria-label={`${label}, along a line`}
            min={min}
            max={max}
            value={Math.min(max, Math.max(min, value))}
            onChange={(event) => {
              setTyped(undefined)
              onChange(Number(event.target.value))
            }}
          />
          <input
            {...control}
            className="input slider-number"
            inputMode="numeric"
            autoComplete="off"
            value={text}
            onBlur={() => isGood && setTyped(undefined)}
            onChange={(event) => {
              setTyped(event.target.value)
              const next = readWhole(event.target.value, decimal)
              if (next !== undefined && next >= min && next <= max) onChange(next)
            }}
          />
        </div>
      )}
    </Field>
  )
}

function readWhole(text: string, decimal: DecimalMark): number | undefined {
  const read = parseCount(text.replace(/^\s*[−-]/, '-'), { decimal, allowNegative: true })
  return read.ok ? read.value.value : undefined
}
