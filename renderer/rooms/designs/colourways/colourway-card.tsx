import { slotKey } from '../../../../shared-core/design/bill.ts'
import type { Format } from '../../../app/format.ts'
import { Badge } from '../../../ui/badge.tsx'
import { Button, IconButton } from '../../../ui/button.tsx'
import { Swatch } from '../../../ui/swatch.tsx'
import { PieceThumbnail } from '../assembly/piece-thumbnail.tsx'
import type { DesignDetail, Fillings, MaterialRow } from '../page/open-design.ts'
import { limitWords, type Standing } from './standing.ts'
import { usePiece } from './use-piece.ts'

type ColourwayCardProps = Readonly<{
  design: DesignDetail
  standing: Standing
  /** What is being tried in it, before it is saved. */
  tried: Fillings | undefined
  materials: readonly MaterialRow[]
  widthPx: number
  format: Format
  isOnly: boolean
  onBeads: () => void
  onCopy: () => void
  onRemove: () => void
}>

const INSET_PX = 2
const SHAPE = 0.72

/** One colourway: drawn, its cost, what stock says, and which bead fills which slot. */
export function ColourwayCard({
  design,
  standing,
  tried,
  materials,
  widthPx,
  format,
  isOnly,
  onBeads,
  onCopy,
  onRemove,
}: ColourwayCardProps) {
  const { body, versionId } = design
  const { name } = standing
  const piece = usePiece(versionId, body, tried ?? standing.materials, materials)
  const width = widthPx - INSET_PX
  return (
    <li className="colourway-card" aria-label={name}>
      <PieceThumbnail
        assembly={piece.assembly}
        pictureKey={piece.key}
        label={`${name}, drawn`}
        width={width}
        height={Math.round(width * SHAPE)}
      />
      <div className="colourway-text">
        <h2>{name}</h2>
        <p>
          <Verdict standing={standing} unitName={body.unitName} format={format} />
        </p>
        <p className="designs-quiet">{limitWords(standing, body.unitName, format)}</p>
        <p className="tabular">{costWords(standing, body.unitName, format)}</p>
        <ul className="colourway-beads" aria-label={`Beads of ${name}`}>
          {piece.beads.map(({ slot, material, hex, finish }) => (
            <li key={slot.label}>
              <span className="slot-letter">{slot.label}</span>
              <Swatch look={{ hex, finish }} />
              <span>{material?.name ?? `${slot.name}, no bead chosen`}</span>
              <span className="colourway-need">{needWords(standing, slot.label, format)}</span>
            </li>
          ))}
        </ul>
      </div>
      <div className="colourway-acts">
        <Button small icon="bead" onClick={onBeads} aria-label={`Choose beads of ${name}`}>
          Choose beads
        </Button>
        <IconButton icon="copy" label={`Copy ${name}`} onClick={onCopy} />
        <IconButton icon="remove" label={`Remove ${name}`} disabled={isOnly} onClick={onRemove} />
      </div>
    </li>
  )
}

function Verdict({
  standing: { makeable },
  unitName,
  format,
}: Readonly<{ standing: Standing; unitName: string; format: Format }>) {
  if (makeable === null) return <Badge tone="quiet">Not all chosen yet</Badge>
  if (makeable === 0) return <Badge tone="attention">None makeable now</Badge>
  return <Badge tone="good">{`${format.counted(makeable, unitName)} makeable now`}</Badge>
}

function costWords({ costMinor, costsUnknown, lines }: Standing, unitName: string, format: Format) {
  if (costsUnknown === lines.length) return 'Cost of materials not known'
  const rest = costsUnknown === 0 ? '' : `, ${format.counted(costsUnknown, 'cost')} not known`
  return `${format.money(costMinor)} of materials a ${unitName}${rest}`
}

function needWords({ lines }: Standing, label: string, format: Format): string {
  const line = lines.find(({ key }) => key === slotKey(label))
  return line === undefined ? 'not used' : format.quantity(line.quantity, line.unit)
}
