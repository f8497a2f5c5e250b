import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import type { Format } from '../../app/format.ts'
import { hrefTo } from '../../app/place.ts'
import { Badge, type BadgeTone } from '../../ui/badge.tsx'
import { EmptyState } from '../../ui/empty-state.tsx'
import { Swatch, type SwatchLook } from '../../ui/swatch.tsx'

type Attention = CallOutput<'today.read'>['attention'][number]
type Material = CallOutput<'materials.list'>['materials'][number]

const kindWords: Readonly<Record<Attention['kind'], readonly [BadgeTone, string]>> = {
  'order-due': ['busy', 'Due'],
  'order-short': ['bad', 'Short'],
  'stock-low': ['attention', 'Low'],
  'stock-unweighed': ['quiet', 'Not weighed'],
  'price-missing': ['attention', 'No price'],
  'slot-unassigned': ['attention', 'No bead'],
  'piece-unplaced': ['attention', 'Nowhere'],
}

/** What needs the maker, most pressing first; each line is a link to its cure. */
export function AttentionList({
  attention,
  materials,
  format,
}: Readonly<{
  attention: readonly Attention[]
  materials: readonly Material[]
  format: Format
}>) {
  if (attention.length === 0) {
    return (
      <EmptyState picture="calendar">
        Nothing needs you today: every order is covered and nothing runs low.
      </EmptyState>
    )
  }
  const materialOf = new Map(materials.map((material) => [material.id, material]))
  return (
    <section aria-labelledby="today-attention">
      <h2 id="today-attention" className="today-head">
        What needs you
      </h2>
      <ul className="today-list">
        {attention.map((line) => (
          <li key={`${line.kind} ${line.openId} ${line.text}`}>
            <Line line={line} material={materialOf.get(line.openId ?? '')} format={format} />
          </li>
        ))}
      </ul>
    </section>
  )
}

function Line({
  line,
  material,
  format,
}: Readonly<{ line: Attention; material: Material | undefined; format: Format }>) {
  const [tone, words] =
    material?.alert === 'short' ? kindWords['order-short'] : kindWords[line.kind]
  const look = lookOf(material)
  return (
    <a href={hrefTo({ room: line.room, id: line.openId ?? undefined })} className="today-line">
      <span className="today-kind">
        <Badge tone={tone}>{words}</Badge>
      </span>
      <span className="today-text">
        <strong className="today-title">
          {look !== undefined && <Swatch look={look} size={18} />}
          {line.text}
        </strong>
        <span className="today-detail">{line.detail}</span>
      </span>
      {line.dueOn !== null && (
        <span className="today-due">
          <span>{format.date(line.dueOn)}</span>
          <span className="today-detail">{format.away(line.dueOn)}</span>
        </span>
      )}
    </a>
  )
}

function lookOf(material: Material | undefined): SwatchLook | undefined {
  if (material?.colourHex == null) return undefined
  return { hex: material.colourHex, finish: material.finish ?? 'opaque' }
}
