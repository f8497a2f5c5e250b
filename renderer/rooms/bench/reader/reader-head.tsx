import { Dialog as Base } from '@base-ui/react/dialog'
import type { MouseEvent } from 'react'
import type {
  PlacedLine,
  ReaderMap,
  ReaderPlace,
  ReaderStride,
} from '../../../../shared-core/bench/reader-place.ts'
import { type PaceSeen, timeLeft } from '../../../../shared-core/bench/time-left.ts'
import type { WorkClock } from '../../../../shared-core/bench/work-clock.ts'
import { capital } from '../../../app/capital.ts'
import type { Format } from '../../../app/format.ts'
import { BasisMark } from '../../../ui/basis-mark.tsx'
import { Button } from '../../../ui/button.tsx'
import { SegmentedChoice } from '../../../ui/segmented-choice.tsx'
import { clockText } from './clock-text.ts'
import type { ReaderSettings } from './reader-settings.ts'
import { pieceName } from './tell-line.ts'

type ReaderHeadProps = Readonly<{
  title: string
  unitName: string
  place: ReaderPlace
  map: ReaderMap
  placed: PlacedLine
  at: number
  clock: WorkClock
  pace: PaceSeen
  format: Format
  isDone: boolean
  isTimed: boolean
  settings: ReaderSettings
  onPause: () => void
  onTimed: () => void
  onStride: (stride: ReaderStride) => void
  onLeave: () => void
}>

/** The reader's top: what is made, which piece of how many, time worked and left, and the way out. */
export function ReaderHead(props: ReaderHeadProps) {
  const { title, unitName, place, map, placed, at, clock, format, settings } = props
  const unit = Math.floor(place.copy / Math.max(1, map.piecesInUnit))
  const left = timeLeft(map, at, props.pace)
  const isStanding = clock.state !== 'working'
  return (
    <header className="reader-head">
      <div className="reader-title">
        <Base.Title render={<h1>{title}</h1>} />
        <p>
          {`${capital(unitName)} ${unit + 1} of ${map.units}`}
          {` · ${pieceName(placed.piece)}`}
        </p>
      </div>
      <p className={`reader-clock tabular${isStanding ? ' reader-clock-stands' : ''}`}>
        <span>
          <span className="unseen">Time worked </span>
          {clockText(clock.workedMs / 1_000)}
        </span>
        <span className="reader-left">
          {props.isDone ? (
            'done'
          ) : (
            <>
              about {format.duration(Math.max(60, left.leftS))} left{' '}
              <BasisMark basis={left.basis} />
            </>
          )}
        </span>
      </p>
      <div className="reader-tools">
        <SegmentedChoice
          label="Go on by"
          labelHidden
          value={settings.stride}
          options={[
            { value: 'row', label: 'By row' },
            { value: 'step', label: 'By bead' },
          ]}
          onChange={props.onStride}
        />
        <Button
          icon={isStanding ? 'play' : 'pause'}
          disabled={props.isDone}
          onMouseDown={keepFocus}
          onClick={props.onPause}
        >
          {isStanding ? 'Go on' : 'Pause'}
        </Button>
        <Button
          aria-pressed={props.isTimed}
          disabled={props.isDone}
          onMouseDown={keepFocus}
          onClick={props.onTimed}
        >
          Timer
        </Button>
        <Button icon="close" onClick={props.onLeave}>
          Leave
        </Button>
      </div>
    </header>
  )
}

/** A click leaves the focus with the work, so that the next press moves on. */
function keepFocus(event: MouseEvent): void {
  event.preventDefault()
}
