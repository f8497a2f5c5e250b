import { capital } from '../../app/capital.ts'
import { fetched } from '../../app/fetched.tsx'
import type { Format } from '../../app/format.ts'
import { hrefTo } from '../../app/place.ts'
import { Icon } from '../../ui/icon.tsx'
import { type BenchWork, isBegun, READING } from '../bench/bench-places.ts'
import { placeWords } from '../bench/place-words.ts'

const SIZE = 64

/** Comes after the page: what draws beads is not needed to read it. */
const WorkPicture = fetched(async () => (await import('./work-picture.tsx')).WorkPicture)

/** Work under way, latest touched first: each line goes on where the hand was. */
export function OnTheBench({
  works,
  format,
}: Readonly<{ works: readonly BenchWork[]; format: Format }>) {
  if (works.length === 0) return null
  return (
    <section aria-labelledby="today-bench">
      <h2 id="today-bench" className="today-head">
        On the bench
      </h2>
      <ul className="today-list">
        {works.map((work) => (
          <li key={work.id}>
            <WorkLine work={work} format={format} />
          </li>
        ))}
      </ul>
    </section>
  )
}

function WorkLine({ work, format }: Readonly<{ work: BenchWork; format: Format }>) {
  const { order } = work
  const forWhom =
    order === null ? 'for the shelf' : `for ${order.code}, due ${format.away(order.dueOn)}`
  const made = `${format.count(work.unitsDone)} of ${format.counted(work.units, work.unitName)} made`
  return (
    <a
      href={hrefTo({ room: 'bench', id: work.id, sub: isBegun(work) ? READING : undefined })}
      className="today-line today-work"
    >
      {/* The name stands beside it: the picture would only be spoken before it. */}
      <span className="today-picture" aria-hidden="true" style={{ width: SIZE, height: SIZE }}>
        <WorkPicture designId={work.designId} label={`${work.designName}, drawn`} size={SIZE} />
      </span>
      <span className="today-text">
        <strong className="today-title">{work.designName}</strong>
        <span>{capital(placeWords(work, format))}</span>
        <span className="today-detail">{`${made}, ${forWhom}`}</span>
      </span>
      <span className="today-go-on">
        {isBegun(work) ? 'Go on' : 'Begin'} <Icon name="forward" size={16} />
      </span>
    </a>
  )
}
