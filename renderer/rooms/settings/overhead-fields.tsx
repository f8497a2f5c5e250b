import { useState } from 'react'
import { parseMoney } from '../../../shared-core/units/parse-money.ts'
import { parsePercent } from '../../../shared-core/units/parse-percent.ts'
import { percentOf } from '../../../shared-core/units/ratio.ts'
import type { Format } from '../../app/format.ts'
import { QuantityInput } from '../../ui/quantity-input.tsx'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import type { Workshop } from './settings-types.ts'

type Overhead = Workshop['overhead']

/** Rent, light, stall fees and the like, shared out in one of three ways. */
export function OverheadFields({
  overhead,
  format,
  error,
  onOverhead,
}: Readonly<{
  overhead: Overhead
  format: Format
  error: string | undefined
  onOverhead: (overhead: Overhead | undefined) => void
}>) {
  const { currency, decimal } = format
  const [kind, setKind] = useState(overhead.kind)
  const [text, setText] = useState(
    overhead.kind === 'percent-of-labour'
      ? format.percent(overhead.percent)
      : format.money(overhead.amountMinor),
  )
  function choose(next: Overhead['kind']) {
    setKind(next)
    setText('')
    onOverhead(undefined)
  }
  return (
    <>
      <SegmentedChoice
        label="Overhead is shared out"
        value={kind}
        options={[
          { value: 'percent-of-labour', label: 'as a share of labour' },
          { value: 'per-hour', label: 'by the hour' },
          { value: 'per-piece', label: 'by the piece' },
        ]}
        onChange={choose}
      />
      {kind === 'percent-of-labour' ? (
        <QuantityInput
          label="Share of labour"
          error={error}
          text={text}
          parse={(typed) => parsePercent(typed, { decimal })}
          onText={(typed, value) => {
            setText(typed)
            onOverhead(value === undefined ? undefined : { kind, percent: percentOf(value) })
          }}
        />
      ) : (
        <QuantityInput
          label={kind === 'per-hour' ? 'Overhead of an hour' : 'Overhead of a piece'}
          error={error}
          text={text}
          parse={(typed) => parseMoney(typed, { currency, decimal })}
          onText={(typed, value) => {
            setText(typed)
            onOverhead(value === undefined ? undefined : { kind, amountMinor: value.amountMinor })
          }}
        />
      )}
    </>
  )
}
