import type { Format } from '../../../app/format.ts'
import { hrefTo } from '../../../app/place.ts'
import { Badge } from '../../../ui/badge.tsx'
import { IconButton } from '../../../ui/button.tsx'
import { Card, CardLink } from '../../../ui/card.tsx'
import { PieceThumbnail } from '../assembly/piece-thumbnail.tsx'
import type { DesignRow } from './design-row.ts'
import { useDrawing } from './use-drawing.ts'
import { useSettledIn } from './use-settled-in.ts'

type DesignCardProps = Readonly<{
  design: DesignRow
  /** Which one it is of all on the wall, from 1: the others may not be on the page. */
  number: number
  of: number
  widthPx: number
  format: Format
  onDuplicate: () => void
  onArchive: () => void
}>

const INSET_PX = 2
const SHAPE = 0.74

/** How high a card's picture is, px. */
export function pictureHeight(widthPx: number): number {
  return Math.round((widthPx - INSET_PX) * SHAPE)
}

/** One design on the wall: drawn, named, and what it does for the workshop. */
export function DesignCard({
  design,
  number,
  of,
  widthPx,
  format,
  onDuplicate,
  onArchive,
}: DesignCardProps) {
  const { id, name, unitName, beads, tags, archived } = design
  const drawing = useDrawing(id, useSettledIn())
  return (
    <Card className="design-card" aria-posinset={number} aria-setsize={of}>
      <PieceThumbnail
        assembly={drawing?.assembly}
        pictureKey={drawing?.key ?? ''}
        label={`${name}, drawn`}
        width={widthPx - INSET_PX}
        height={pictureHeight(widthPx)}
      />
      <div className="design-card-text">
        <h2 className="design-card-name" title={name}>
          <CardLink href={hrefTo({ room: 'designs', id })}>{name}</CardLink>
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
        <p className="design-tags" title={tags.join(', ')}>
          {tags.join(', ')}
        </p>
        <div className="design-card-acts">
          <IconButton icon="copy" label={`Duplicate ${name}`} onClick={onDuplicate} />
          <IconButton
            icon={archived ? 'undo' : 'archive'}
            label={`${archived ? 'Bring back' : 'Put away'} ${name}`}
            onClick={onArchive}
          />
        </div>
      </div>
    </Card>
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
