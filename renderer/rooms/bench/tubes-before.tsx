import { useState } from 'react'
import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import { parseMass } from '../../../shared-core/units/parse-mass.ts'
import type { DecimalMark } from '../../../shared-core/units/parse-options.ts'
import { QuantityInput } from '../../ui/quantity-input.tsx'

type Draw = CallOutput<'makes.plan'>['draws'][number]

/** What each tube weighs before the work, if she likes: weighed again at the end it tells what was used. */
export function TubesBefore({
  draws,
  decimal,
  before,
  onBefore,
}: Readonly<{
  draws: readonly Draw[]
  decimal: DecimalMark
  before: Readonly<Record<string, number>>
  onBefore: (before: Readonly<Record<string, number>>) => void
}>) {
  const [texts, setTexts] = useState<Readonly<Record<string, string>>>({})
  const names = new Map(
    draws.filter(({ unit }) => unit === 'mg').map(({ materialId, name }) => [materialId, name]),
  )
  if (names.size === 0) return null
  return (
    <details className="bench-tubes">
      <summary>Weigh the tubes first</summary>
      <p className="bench-soft">
        Each as it stands, tube and all. Weighed again at the end, they tell what was really used.
      </p>
      <div className="bench-pair">
        {[...names].map(([materialId, name]) => (
          <QuantityInput
            key={materialId}
            label={name}
            optional
            unit="g"
            text={texts[materialId] ?? ''}
            parse={(text) => parseMass(text, { decimal })}
            onText={(text, value) => {
              setTexts({ ...texts, [materialId]: text })
              const { [materialId]: _, ...rest } = before
              onBefore(value === undefined ? rest : { ...rest, [materialId]: value })
            }}
          />
        ))}
      </div>
    </details>
  )
}
