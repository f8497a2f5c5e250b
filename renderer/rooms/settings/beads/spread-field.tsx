import { formatSpread } from '../../../../shared-core/units/format-spread.ts'
import type { DecimalMark, ParseResult } from '../../../../shared-core/units/parse-options.ts'
import { parseSpread } from '../../../../shared-core/units/parse-spread.ts'
import type { Spread } from '../../../../shared-core/units/spread.ts'
import { QuantityInput } from '../../../ui/quantity-input.tsx'
import type { TypedSpread } from './typed-spread.ts'

/** A figure and its range in one field: `1,6 (1,5 to 1,7)`, a range alone, or the figure alone. */
export function SpreadField({
  label,
  hint,
  unit,
  typed,
  onTyped,
  decimal,
  error,
}: Readonly<{
  label: string
  hint?: string
  unit: string
  typed: TypedSpread
  onTyped: (typed: TypedSpread) => void
  decimal: DecimalMark
  error: string | undefined
}>) {
  return (
    <QuantityInput
      label={label}
      hint={hint}
      unit={unit}
      text={typed.text}
      parse={(text) => readSpread(text, unit, decimal)}
      onText={(text, spread) => onTyped({ text, spread, isKept: false })}
      error={error}
    />
  )
}

/** Understood without its unit, which stands behind the field. */
function readSpread(text: string, unit: string, decimal: DecimalMark): ParseResult<Spread> {
  const read = parseSpread(text, { decimal, basis: 'measured', unit })
  if (!read.ok) return read
  const { value } = read.value
  return { ok: true, value: { value, understood: formatSpread(value, { decimal }) } }
}
