import { useMemo } from 'react'
import { findForm, findThread, referenceTables } from '../../../../shared-core/beads/bead-tables.ts'
import { fromChartJson } from '../../../../shared-core/chart/chart-json.ts'
import { threadGapMm } from '../../../../shared-core/chart/stitch-pitch.ts'
import type { Format } from '../../../app/format.ts'
import { hrefTo } from '../../../app/place.ts'
import { BeadThumbnail } from '../../../drawing/bead-thumbnail.tsx'
import { chartScene } from '../../../drawing/chart-scene.ts'
import { Badge } from '../../../ui/badge.tsx'
import { IconButton } from '../../../ui/button.tsx'
import { isLong, layScene } from '../assembly/lay-across.ts'
import type { DesignRow } from './design-row.ts'

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
  const { id, name, unitName, beads, tags, archived, thumbnail } = design
  const scene = useMemo(() => thumbnailScene(thumbnail), [thumbnail])
  const width = widthPx - INSET_PX
  return (
    <li className="design-card">
      <BeadThumbnail
        scene={scene}
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

/** A braid of middle size: how close beads lie in a thumbnail. */
const THUMBNAIL_THREAD = 'braided-6lb'

function thumbnailScene({ chart, formId, palette }: DesignRow['thumbnail']) {
  const form = findForm(referenceTables, formId ?? '')
  if (chart === null || form === undefined) return null
  const thread = findThread(referenceTables, THUMBNAIL_THREAD)
  const scene = chartScene({
    chart: fromChartJson(chart),
    form,
    palette: palette.map(({ colourHex, finish }) => ({ hex: colourHex, finish })),
    threadMm: threadGapMm(thread?.diameterMm.value ?? 0),
  })
  return isLong(scene) ? layScene(scene) : scene
}
