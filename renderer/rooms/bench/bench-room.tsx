import { usePlace } from '../../app/place.ts'
import { BenchHome } from './bench-home.tsx'
import { PACE_PAGE, READING, START } from './bench-places.ts'
import { FinishPage } from './finish/finish-page.tsx'
import { PacePage } from './pace/pace-page.tsx'
import { ReadingPage } from './work/reading-page.tsx'
import { WorkPage } from './work/work-page.tsx'
import './bench.css'

/** The Bench: what is under way, one work of it, its end, or what the bench has taught. */
export function BenchRoom() {
  const { id, sub } = usePlace()
  if (id === undefined) return <BenchHome startId={undefined} />
  if (id === START) return <BenchHome startId={sub ?? ''} />
  if (id === PACE_PAGE) return <PacePage />
  if (sub === 'finish') return <FinishPage key={id} id={id} />
  if (sub === READING) return <ReadingPage key={id} id={id} />
  return <WorkPage key={id} id={id} />
}
