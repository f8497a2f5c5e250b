import { useState } from 'react'
import { parseDuration } from '../../../shared-core/units/parse-duration.ts'
import type { DecimalMark } from '../../../shared-core/units/parse-options.ts'
import { QuantityInput } from '../../ui/quantity-input.tsx'

/** Bench time of all units together, when it was kept. */
export function BenchTime({
  decimal,
  onTime,
}: Readonly<{ decimal: DecimalMark; onTime: (seconds: number | undefined) => void }>) {
  const [text, setText] = useState('')
  return (
    <QuantityInput
      label="Bench time in all"
      optional
      hint="Such as 5 h 20 min. It teaches the studio your own pace."
      text={text}
      parse={(typed) => parseDuration(typed, { decimal })}
      onText={(next, value) => {
        setText(next)
        onTime(value)
      }}
    />
  )
}
