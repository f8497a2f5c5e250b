import { useState } from 'react'
import type { Extra } from '../../../../shared-core/design/design.ts'
import { formatCount } from '../../../../shared-core/units/format-number.ts'
import { parseCount } from '../../../../shared-core/units/parse-count.ts'
import type { DecimalMark } from '../../../../shared-core/units/parse-options.ts'
import { withinBounds } from '../../../../shared-core/units/within-bounds.ts'
import { Button, IconButton } from '../../../ui/button.tsx'
import { QuantityInput } from '../../../ui/quantity-input.tsx'
import { TextInput } from '../../../ui/text-input.tsx'

type ExtrasProps = Readonly<{
  extras: readonly Extra[]
  onChange: (extras: readonly Extra[]) => void
  decimal: DecimalMark
}>

/** As many of one finding as a unit takes. */
const MOST_EXTRAS = 10_000

/** What one unit takes beside beads and thread: findings and packaging, each with its number. */
export function ExtrasFields({ extras, onChange, decimal }: ExtrasProps) {
  const change = (id: string, part: Partial<Extra>) =>
    onChange(extras.map((one) => (one.id === id ? { ...one, ...part } : one)))
  const add = (kind: Extra['kind']) =>
    onChange([...extras, { id: freshId(extras), kind, name: '', count: 1 }])
  return (
    <fieldset className="extras">
      <legend className="field-label">Findings and packaging of one unit</legend>
      {extras.map((extra) => (
        <ExtraRow
          key={extra.id}
          extra={extra}
          decimal={decimal}
          onChange={(part) => change(extra.id, part)}
          onRemove={() => onChange(extras.filter(({ id }) => id !== extra.id))}
        />
      ))}
      <div className="designs-buttons">
        <Button small kind="quiet" icon="add" onClick={() => add('finding')}>
          Finding
        </Button>
        <Button small kind="quiet" icon="add" onClick={() => add('packaging')}>
          Packaging
        </Button>
      </div>
    </fieldset>
  )
}

function ExtraRow({
  extra: { kind, name, count },
  decimal,
  onChange,
  onRemove,
}: Readonly<{
  extra: Extra
  decimal: DecimalMark
  onChange: (part: Partial<Extra>) => void
  onRemove: () => void
}>) {
  const [text, setText] = useState(String(count))
  const called = name.trim() || kind
  return (
    <div className="extras-row">
      <TextInput
        label={kind === 'finding' ? 'Finding' : 'Packaging'}
        labelHidden
        placeholder={kind === 'finding' ? 'Finding, such as ear wire' : 'Packaging, such as card'}
        value={name}
        longest={120}
        onChange={(next) => onChange({ name: next })}
      />
      <QuantityInput
        label={`How many of ${called}`}
        labelHidden
        text={text}
        parse={(typed) =>
          withinBounds(parseCount(typed, { decimal }), typed, {
            ...{ least: 1, most: MOST_EXTRAS, of: Number, write: formatCount },
          })
        }
        onText={(typed, value) => {
          setText(typed)
          if (value !== undefined) onChange({ count: value })
        }}
      />
      <IconButton icon="remove" label={`Leave out ${called}`} onClick={onRemove} />
    </div>
  )
}

function freshId(extras: readonly Extra[]): string {
  for (let number = 1; ; number += 1) {
    const id = `extra${number}`
    if (!extras.some((one) => one.id === id)) return id
  }
}
