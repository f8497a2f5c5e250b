import type { DesignBody, Extra } from '../../../../shared-core/design/design.ts'
import { parseCount } from '../../../../shared-core/units/parse-count.ts'
import type { Format } from '../../../app/format.ts'
import { Button, IconButton } from '../../../ui/button.tsx'
import { KeptFigure, KeptText } from './kept-field.tsx'
import { removeExtra } from './part-edits.ts'

type ExtraFieldsProps = Readonly<{
  body: DesignBody
  format: Format
  onChange: (label: string, next: DesignBody) => void
}>

/** Findings and packaging of one unit, each with its number. */
export function ExtraFields({ body, format, onChange }: ExtraFieldsProps) {
  const { extras } = body
  function change(extra: Extra, label: string) {
    const next = extras.map((one) => (one.id === extra.id ? extra : one))
    onChange(label, { ...body, extras: next })
  }
  function add(kind: Extra['kind'], name: string) {
    const added: Extra = { id: freshId(extras), kind, name: freshName(extras, name), count: 1 }
    onChange(`Add ${added.name}`, { ...body, extras: [...extras, added] })
  }
  return (
    <fieldset className="parts-extras">
      <legend className="field-label">Findings and packaging</legend>
      {extras.map((extra) => (
        <div key={extra.id} className="parts-extra">
          <KeptText
            label={extra.kind === 'finding' ? 'Finding' : 'Packaging'}
            labelHidden
            value={extra.name}
            longest={120}
            refuse={(text) => (text.trim() === '' ? 'It needs a name.' : undefined)}
            onKeep={(name) => change({ ...extra, name }, `Rename ${extra.name}`)}
          />
          <KeptFigure
            label={`How many of ${extra.name}`}
            labelHidden
            value={extra.count}
            write={format.count}
            parse={(text) => parseCount(text, { decimal: format.decimal })}
            range={[1, 10_000]}
            onKeep={(count) =>
              change({ ...extra, count: count ?? extra.count }, `Number of ${extra.name}`)
            }
          />
          <IconButton
            icon="remove"
            label={`Leave out ${extra.name}`}
            onClick={() => onChange(`Leave out ${extra.name}`, removeExtra(body, extra.id))}
          />
        </div>
      ))}
      <div className="designs-buttons">
        <Button small kind="quiet" icon="add" onClick={() => add('finding', 'Finding')}>
          Finding
        </Button>
        <Button small kind="quiet" icon="add" onClick={() => add('packaging', 'Packaging')}>
          Packaging
        </Button>
      </div>
    </fieldset>
  )
}

function freshId(extras: readonly Extra[]): string {
  for (let number = 1; ; number += 1) {
    if (!extras.some(({ id }) => id === `extra${number}`)) return `extra${number}`
  }
}

function freshName(extras: readonly Extra[], stem: string): string {
  for (let number = 1; ; number += 1) {
    const wanted = number === 1 ? stem : `${stem} ${number}`
    if (!extras.some(({ name }) => name === wanted)) return wanted
  }
}
