import { capital } from '../../app/capital.ts'
import type { Format } from '../../app/format.ts'
import { hrefTo } from '../../app/place.ts'
import { Badge } from '../../ui/badge.tsx'
import { Card, CardLink } from '../../ui/card.tsx'
import { Icon } from '../../ui/icon.tsx'
import { PieceThumbnail } from '../designs/assembly/piece-thumbnail.tsx'
import { useDrawing } from '../designs/gallery/use-drawing.ts'
import { type BenchWork, isBegun, READING } from './bench-places.ts'
import { placeWords } from './place-words.ts'

const WIDTH = 168
const HEIGHT = 186

/** Work under way, latest touched first, each one click from going on. */
export function WorkCards({
  works,
  format,
}: Readonly<{ works: readonly BenchWork[]; format: Format }>) {
  if (works.length === 0) return null
  return (
    <section className="bench-under-way" aria-labelledby="bench-under-way">
      <h2 id="bench-under-way" className="bench-head">
        Under way
      </h2>
      <ul className="bench-cards">
        {works.map((work) => (
          <WorkCard key={work.id} work={work} format={format} />
        ))}
      </ul>
    </section>
  )
}

function WorkCard({ work, format }: Readonly<{ work: BenchWork; format: Format }>) {
  const { id, designId, designName, colourwayName, units, unitsDone, unitName, order } = work
  const drawing = useDrawing(designId, true)
  return (
    <Card className="bench-card">
      <PieceThumbnail
        assembly={drawing?.assembly}
        pictureKey={drawing?.key ?? ''}
        label={`${designName}, drawn`}
        width={WIDTH}
        height={HEIGHT}
      />
      <div className="bench-card-text">
        <h3>
          <CardLink href={hrefTo({ room: 'bench', id, sub: isBegun(work) ? READING : undefined })}>
            {designName}
          </CardLink>
        </h3>
        <p className="bench-soft">{colourwayName}</p>
        <p className="bench-card-at">{capital(placeWords(work, format))}</p>
        <p>{`${format.count(unitsDone)} of ${format.counted(units, unitName)} made`}</p>
        <p className="bench-soft">
          {`${format.duration(work.workedS)} of about ${format.duration(work.plannedS.value)}`}
        </p>
        <p className="bench-card-end">
          {order === null ? (
            <Badge tone="quiet">For the shelf</Badge>
          ) : (
            <Badge tone="busy">{`${order.code}, due ${format.away(order.dueOn)}`}</Badge>
          )}
          <span className="bench-go-on" aria-hidden="true">
            {isBegun(work) ? 'Go on' : 'Begin'} <Icon name="forward" size={16} />
          </span>
        </p>
      </div>
    </Card>
  )
}
