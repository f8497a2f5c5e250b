import { useMemo } from 'react'
import { parseExtent } from '../../../../shared-core/chart/outlines/parse-extent.ts'
import { useFormat } from '../../../app/use-format.ts'
import { QuantityInput } from '../../../ui/quantity-input.tsx'

/** How far one way, in mm, inches or beads, as typed. */
export function ExtentInput({
  label,
  text,
  onText,
  hint,
  disabled = false,
}: Readonly<{
  label: string
  text: string
  onText: (text: string) => void
  hint?: string
  disabled?: boolean
}>) {
  const { decimal } = useFormat()
  const parse = useMemo(() => (typed: string) => parseExtent(typed, { decimal }), [decimal])
  return (
    <QuantityInput
      label={label}
      text={text}
      parse={parse}
      disabled={disabled}
      onText={(typed) => onText(typed)}
      {...(hint === undefined ? {} : { hint })}
    />
  )
}
