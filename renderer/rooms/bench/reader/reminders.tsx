import {
  lineAfter,
  type PlacedLine,
  type ReaderMap,
} from '../../../../shared-core/bench/reader-place.ts'
import type { WorkClock } from '../../../../shared-core/bench/work-clock.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { capital } from '../../../app/capital.ts'
import type { Format } from '../../../app/format.ts'
import { Button } from '../../../ui/button.tsx'
import { Icon } from '../../../ui/icon.tsx'
import type { ReaderSettings } from './reader-settings.ts'
import { tellHoles } from './tell-holes.ts'
import { lineName } from './tell-line.ts'

type RemindersProps = Readonly<{
  clock: WorkClock
  settings: ReaderSettings
  placed: PlacedLine
  /** The step in hand, where it goes on by bead. */
  step: number | undefined
  map: ReaderMap
  at: number
  body: DesignBody
  format: Format
  onRest: () => void
  onResume: () => void
}>

/** What must be known before this row is worked, and what is good to be reminded of. */
export function Reminders(props: RemindersProps) {
  const { clock, settings, placed, map, at, body, format } = props
  if (at >= map.steps) return null
  const unit = Math.floor(at / map.stepsInUnit)
  const isNewUnit = at > 0 && at % map.stepsInUnit === 0
  const next = lineAfter(map, at)
  const holes = tellHoles(placed, props.step)
  const needsRest = settings.restMin > 0 && clock.sinceRestMs >= settings.restMin * 60_000
  return (
    <div className="reader-notes">
      {clock.state === 'idle' && (
        <Note
          text={`Nothing has moved for a while, so the clock stands. The wait is not counted beyond what this row takes. It goes on with your next step.`}
        />
      )}
      {clock.state === 'paused' && <Note text="Paused. The clock goes on with your next step." />}
      {isNewUnit && (
        <Note text={`${capital(body.unitName)} ${unit} of ${map.units} is done. On to the next.`} />
      )}
      {placed.line.kind === 'thread' && placed.line.firstStep > 0 && (
        <Note
          isUrgent
          text={`New thread${before(next)}: cut ${format.thread(placed.line.threadMm ?? 0)}.`}
        />
      )}
      {next?.line.kind === 'thread' && next.stretch === placed.stretch && (
        <Note text="After this, a new thread: leave enough to weave the end in." />
      )}
      {holes.map((text) => (
        <Note key={text} isUrgent text={text} />
      ))}
      {needsRest && (
        <Note
          text="Time to rest eyes and hands: look far away, stretch your fingers, check the light. Stop if it hurts, and ask someone who knows."
          action={
            <Button small onClick={props.onRest}>
              Rested
            </Button>
          }
        />
      )}
    </div>
  )
}

function before(next: PlacedLine | undefined): string {
  if (next === undefined || (next.line.kind !== 'row' && next.line.kind !== 'strand')) return ''
  const name = lineName(next)
  const told = next.line.kind === 'row' ? name.charAt(0).toLowerCase() + name.slice(1) : name
  return next.line.isContinued ? ` before ${told} goes on` : ` before ${told}`
}

function Note({
  text,
  isUrgent = false,
  action,
}: Readonly<{ text: string; isUrgent?: boolean; action?: React.ReactNode }>) {
  return (
    <p className={`reader-note${isUrgent ? ' reader-note-urgent' : ''}`}>
      <Icon name={isUrgent ? 'alert' : 'info'} size={isUrgent ? 28 : 20} />
      <span>{text}</span>
      {action}
    </p>
  )
}
