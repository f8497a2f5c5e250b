import { useRef } from 'react'
import type { Format } from '../../../app/format.ts'
import { hrefTo } from '../../../app/place.ts'
import { Badge } from '../../../ui/badge.tsx'
import { IconButton } from '../../../ui/button.tsx'
import { PieceThumbnail } from '../assembly/piece-thumbnail.tsx'
import type { DesignRow } from './design-row.ts'
import { useDrawing } from './use-drawing.ts'
import { useSeen } from './use-seen.ts'

type DesignCardProps = Readonly<{
  design: DesignRow
  widthPx: number
  format: Format
  onDuplicate: () => void
  onArchive: () => void
}>

const INSET_PX = 2
const SHAPE = 0.74

/** One design on the wall: drawn, named, and what it does for the workshop. */
export function DesignCard({ design, widthPx, format, onDuplicate, onArchive }: DesignCardProps) {
  const { id, name, unitName, beads, tags, archived } = design
  const card = useRef<HTMLLIElement>(null)
  const drawing = useDrawing(id, useSeen(card))
  const width = widthPx - INSET_PX
  return (
    <li className="design-card" ref={card}>
      <PieceThumbnail
        assembly={drawing?.assembly}
        pictureKey={drawing?.key ?? ''}
        label={`${name}, drawn`}
        width={width}
        height={Math.round(width * SHAPE)}
      />
      <div className="design-card-text">
        <h2 className="design-card-name">
          <a href={hrefTo({ room: 'designs', id })}>{name}</a>
        </h2>
        <p className="design-card-beads">
          {format.counted(beads, 'bead')} a {unitName}
        </p>
        <p>
          <Makeable design={design} format={format} />
        </p>
        <p className="design-card-sold">{soldWords(design, format)}</p>
      </div>
      <div className="design-card-foot">
        <p className="design-tags">{tags.join(', ')}</p>
        <div className="design-card-acts">
          <IconButton icon="copy" label={`Duplicate ${name}`} onClick={onDuplicate} />
          <IconButton
            icon={archived ? 'undo' : 'archive'}
            label={`${archived ? 'Bring back' : 'Put away'} ${name}`}
            onClick={onArchive}
          />
        </div>
      </div>
    </li>
  )
}

function Makeable({
  design: { makeable, unitName },
  format,
}: Readonly<{ design: DesignRow; format: Format }>) {
  if (makeable === null) return <Badge tone="quiet">Beads not chosen yet</Badge>
  if (makeable === 0) return <Badge tone="attention">None makeable now</Badge>
  return <Badge tone="good">{`${format.counted(makeable, unitName)} makeable now`}</Badge>
}

function soldWords({ sold, takenMinor }: DesignRow, format: Format): string {
  return sold === 0 ? 'None sold yet' : `${format.count(sold)} sold, ${format.money(takenMinor)}`
}
