import type { DesignBody, Strand } from '../../../../shared-core/design/design.ts'
import type { Format } from '../../../app/format.ts'
import { PanelFields } from './panel-fields.tsx'
import { withPart } from './part-edits.ts'
import { PartList } from './part-list.tsx'
import { StrandFields } from './strand-fields.tsx'
import { UnitFields } from './unit-fields.tsx'
import './parts.css'

type PartsPanelProps = Readonly<{
  body: DesignBody
  /** One step that can be undone, with its label. */
  onChange: (label: string, next: DesignBody) => void
  partId: string | undefined
  onPart: (partId: string) => void
  format: Format
  /** What the design would be while something is being typed; `undefined` when that is over. */
  onTry?: (body: DesignBody | undefined) => void
}>

/** The parts of a design: panels, strands, and what one unit takes beside them. */
export function PartsPanel({ body, onChange, partId, onPart, format, onTry }: PartsPanelProps) {
  const part = body.parts.find(({ id }) => id === partId)
  const tryStrand = (strand: Strand | undefined) => onTry?.(strand && withPart(body, strand))
  return (
    <div className="parts-panel">
      <PartList body={body} partId={partId} format={format} onChange={onChange} onPart={onPart} />
      {part !== undefined && (
        <section className="parts-group" aria-label={part.name}>
          {part.kind === 'panel' ? (
            <PanelFields
              key={part.id}
              panel={part}
              format={format}
              onChange={(label, panel) => onChange(label, withPart(body, panel))}
            />
          ) : (
            <StrandFields
              key={part.id}
              strand={part}
              body={body}
              format={format}
              onChange={(label, strand) => onChange(label, withPart(body, strand))}
              onTry={tryStrand}
            />
          )}
        </section>
      )}
      <UnitFields body={body} format={format} onChange={onChange} />
    </div>
  )
}
