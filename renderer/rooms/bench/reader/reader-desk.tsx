import { type RefObject, useEffect, useMemo, useState } from 'react'
import {
  lineAfter,
  lineOf,
  placeOf,
  type ReaderMap,
} from '../../../../shared-core/bench/reader-place.ts'
import { useFormat } from '../../../app/use-format.ts'
import type { BeadLook } from '../../../drawing/bead-look.ts'
import type { Assembly } from '../../designs/assembly/assemble.ts'
import type { SlotBead } from '../../designs/page/slot-beads.ts'
import { AllDone } from './all-done.tsx'
import { CurrentLine } from './current-line.tsx'
import type { KeyRole } from './key-roles.ts'
import { lineMs } from './line-ms.ts'
import { NextLine } from './next-line.tsx'
import { ReaderHead } from './reader-head.tsx'
import { ReaderMoves } from './reader-moves.tsx'
import { keepReaderSettings, type ReaderSettings, readReaderSettings } from './reader-settings.ts'
import { ReaderSide, type SideView } from './reader-side.tsx'
import { Reminders } from './reminders.tsx'
import type { RowReaderProps } from './row-reader.tsx'
import { spokenAt } from './spoken-at.ts'
import { telling } from './telling.ts'
import { useAwake } from './use-awake.ts'
import { useBeadTimer } from './use-bead-timer.ts'
import { paceSeen, useBenchWork } from './use-bench-work.ts'
import { useReaderKeys } from './use-reader-keys.ts'
import { useSpeech } from './use-speech.ts'

type ReaderDeskProps = RowReaderProps &
  Readonly<{
    map: ReaderMap
    beads: readonly SlotBead[]
    looks: readonly BeadLook[]
    assembly: Assembly | undefined
    /** Thread and needle, where a length is begun. */
    tools: string
    /** What Escape does first; true when it did something. */
    onEscape: RefObject<() => boolean>
    first: RefObject<HTMLButtonElement | null>
  }>

/** The reader at work: the row in hand, what comes next, the piece, and what can be set. */
export function ReaderDesk(props: ReaderDeskProps) {
  const { map, body, beads, onEscape, first } = props
  const format = useFormat()
  const [settings, setSettings] = useState(readReaderSettings)
  const [view, setView] = useState<SideView>('piece')
  const [isLearning, setLearning] = useState(false)
  const [isTimed, setTimed] = useState(false)
  const bench = useBenchWork({ ...props, idleMin: settings.idleMin })
  const { at, clock } = bench.work
  const isDone = at >= map.steps
  const isWorking = clock.state === 'working' && !isDone
  const tell = useMemo(() => telling(body, beads, format), [body, beads, format])
  const placed = lineOf(map, at)
  const step = isDone || placed === undefined ? undefined : (at % map.stepsInUnit) - placed.from
  const inHand = settings.stride === 'step' ? (step ?? 0) : undefined
  const spoken = spokenAt({ map, at, stride: settings.stride, unitName: body.unitName, tell })
  const timerMs = placed && lineMs(placed.line, step ?? 0, settings)

  useAwake(isWorking)
  useSpeech(spoken, { isOn: settings.isSpoken, voice: settings.voice, rate: settings.rate })
  useBeadTimer({
    isOn: isTimed && isWorking,
    forMs: timerMs,
    at,
    onDone: () => bench.next(settings.stride),
  })
  useReaderKeys({ settings, isLearning, onRole: act })
  useEffect(() => {
    onEscape.current = () => {
      if (isLearning) setLearning(false)
      else if (view !== 'piece') setView('piece')
      else return false
      return true
    }
  }, [onEscape, isLearning, view])

  function change(more: Partial<ReaderSettings>) {
    const next = { ...settings, ...more }
    setSettings(next)
    keepReaderSettings(next)
  }
  function act(role: KeyRole) {
    if (role === 'pause') bench.pause()
    else if (role === 'back') bench.back(settings.stride)
    else if (isDone) finish()
    else bench.next(settings.stride)
  }
  function finish() {
    bench.keepNow()
    props.onFinish()
  }
  if (placed === undefined) return null
  return (
    <>
      <ReaderHead
        title={props.title}
        place={placeOf(map, Math.min(at, map.steps - 1))}
        {...{ map, placed, at, clock, format, isDone, isTimed, view, settings }}
        unitName={body.unitName}
        pace={paceSeen(bench.work)}
        onPause={bench.pause}
        onTimed={() => setTimed(!isTimed)}
        onStride={(stride) => {
          change({ stride })
          // Back to the work: the next press is meant for the row.
          first.current?.focus()
        }}
        onLeave={props.onLeave}
      />
      <div className="reader-body">
        <div className="reader-main">
          <Reminders
            {...{ clock, settings, placed, map, at, body, format }}
            step={inHand}
            onRest={bench.rest}
            onResume={bench.pause}
          />
          {isDone ? (
            <AllDone
              units={props.units}
              unitName={body.unitName}
              workedS={clock.workedMs / 1_000}
              format={format}
            />
          ) : (
            <CurrentLine
              key={placed.stretch.kind}
              {...{ placed, map, at, tell }}
              step={inHand}
              body={body}
              assembly={props.assembly}
              looks={props.looks}
              beads={beads}
              tools={props.tools}
              onNext={() => act('next')}
            />
          )}
          {!isDone && (
            <NextLine next={lineAfter(map, at)} placed={placed} step={inHand} tell={tell} />
          )}
          <ReaderMoves
            {...{ at, isDone, first }}
            line={placed.line}
            step={step ?? 0}
            stride={settings.stride}
            drainMs={isTimed && isWorking ? timerMs : undefined}
            onRole={act}
          />
        </div>
        <ReaderSide
          {...{ view, map, at, placed, format, tell, settings, isLearning, isTimed }}
          body={body}
          assembly={props.assembly}
          clock={clock}
          onView={setView}
          onJump={bench.jump}
          onChange={change}
          onLearning={setLearning}
        />
      </div>
      <p className="unseen" aria-live="polite">
        {spoken}
      </p>
    </>
  )
}
