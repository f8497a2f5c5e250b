import type { RefObject } from 'react'
import { lineAfter, placeOf } from '../../../../shared-core/bench/reader-place.ts'
import type { BeadLook } from '../../../drawing/bead-look.ts'
import type { Assembly } from '../../designs/assembly/assemble.ts'
import { AllDone } from './all-done.tsx'
import { CurrentLine } from './current-line.tsx'
import { NextLine } from './next-line.tsx'
import { ReaderHead } from './reader-head.tsx'
import { ReaderMoves } from './reader-moves.tsx'
import { ReaderSide } from './reader-side.tsx'
import { Reminders } from './reminders.tsx'
import { paceSeen } from './use-bench-work.ts'
import { type ReaderProps, useReader } from './use-reader.ts'

type ReaderDeskProps = ReaderProps &
  Readonly<{
    looks: readonly BeadLook[]
    assembly: Assembly | undefined
    /** Thread and needle, where a length is begun. */
    tools: string
    first: RefObject<HTMLButtonElement | null>
  }>

/** The reader laid out: the row in hand, what comes next, the piece, and what can be set. */
export function ReaderDesk(props: ReaderDeskProps) {
  const { map, body, first, assembly } = props
  const { settings, bench, at, clock, isDone, placed, side, isTimed, format, ...reader } =
    useReader(props)
  if (placed === undefined) return null
  return (
    <>
      <ReaderHead
        title={props.title}
        place={placeOf(map, Math.min(at, map.steps - 1))}
        {...{ map, placed, at, clock, format, isDone, isTimed, settings }}
        unitName={body.unitName}
        pace={paceSeen(bench.work)}
        onPause={bench.pause}
        onTimed={reader.toggleTimed}
        onStride={(stride) => {
          reader.change({ stride })
          // Back to the work: the next press is meant for the row.
          first.current?.focus()
        }}
        onLeave={props.onLeave}
      />
      <div className="reader-body">
        <div className="reader-main">
          <Reminders
            {...{ clock, settings, placed, map, at, body, format }}
            step={reader.inHand}
            onRest={bench.rest}
            onResume={bench.pause}
          />
          <Lines {...props} reader={{ ...reader, at, clock, isDone, placed, format }} />
          <ReaderMoves
            {...{ at, isDone, first }}
            line={placed.line}
            step={reader.step ?? 0}
            stride={settings.stride}
            drainMs={reader.drainMs}
            onRole={reader.act}
          />
        </div>
        <ReaderSide
          {...{ map, at, placed, format, settings, isTimed, body, assembly, clock }}
          view={side.view}
          isLearning={side.isLearning}
          tell={reader.tell}
          onView={side.setView}
          onJump={bench.jump}
          onChange={reader.change}
          onLearning={side.setLearning}
        />
      </div>
      <p className="unseen" aria-live="polite">
        {reader.spoken}
      </p>
    </>
  )
}

type LinesProps = ReaderDeskProps &
  Readonly<{
    reader: Pick<
      ReturnType<typeof useReader>,
      'at' | 'clock' | 'isDone' | 'placed' | 'format' | 'tell' | 'inHand' | 'act'
    >
  }>

/** The line in hand and the one after it, or that all is done. */
function Lines({ map, body, beads, looks, assembly, tools, units, reader }: LinesProps) {
  const { at, clock, isDone, placed, format, tell, inHand, act } = reader
  if (placed === undefined) return null
  if (isDone) {
    return (
      <AllDone
        units={units}
        unitName={body.unitName}
        workedS={clock.workedMs / 1_000}
        format={format}
      />
    )
  }
  return (
    <>
      <CurrentLine
        key={placed.stretch.kind}
        {...{ placed, map, at, tell, body, beads, looks, assembly, tools }}
        step={inHand}
        onNext={() => act('next')}
      />
      <NextLine next={lineAfter(map, at)} placed={placed} step={inHand} tell={tell} />
    </>
  )
}
