import { type RefObject, useEffect, useMemo, useState } from 'react'
import { lineOf, type ReaderMap } from '../../../../shared-core/bench/reader-place.ts'
import { useFormat } from '../../../app/use-format.ts'
import type { SlotBead } from '../../designs/page/slot-beads.ts'
import type { KeyRole } from './key-roles.ts'
import { lineMs } from './line-ms.ts'
import { keepReaderSettings, type ReaderSettings, readReaderSettings } from './reader-settings.ts'
import type { SideView } from './reader-side.tsx'
import type { RowReaderProps } from './row-reader.tsx'
import { spokenAt } from './spoken-at.ts'
import { telling } from './telling.ts'
import { useAwake } from './use-awake.ts'
import { useBeadTimer } from './use-bead-timer.ts'
import { useBenchWork } from './use-bench-work.ts'
import { useReaderKeys } from './use-reader-keys.ts'
import { useSpeech } from './use-speech.ts'

export type ReaderProps = RowReaderProps &
  Readonly<{
    map: ReaderMap
    beads: readonly SlotBead[]
    /** What Escape does first; true when it did something. */
    onEscape: RefObject<() => boolean>
  }>

/** The reader at work: where the hand is, what is said and heard, and what each key and button does. */
export function useReader(props: ReaderProps) {
  const { map, body, beads } = props
  const format = useFormat()
  const [settings, setSettings] = useState(readReaderSettings)
  const [isTimed, setTimed] = useState(false)
  const bench = useBenchWork({ ...props, idleMin: settings.idleMin })
  const { at, clock } = bench.work
  const isDone = at >= map.steps
  const isWorking = clock.state === 'working' && !isDone
  const tell = useMemo(() => telling(body, beads, format), [body, beads, format])
  const placed = lineOf(map, at)
  const step = isDone || placed === undefined ? undefined : (at % map.stepsInUnit) - placed.from
  const spoken = spokenAt({ map, at, stride: settings.stride, unitName: body.unitName, tell })
  const timerMs = placed && lineMs(placed.line, step ?? 0, settings)
  const next = () => bench.next(settings.stride)

  useAwake(isWorking)
  useSpeech(spoken, { isOn: settings.isSpoken, voice: settings.voice, rate: settings.rate })
  useBeadTimer({ isOn: isTimed && isWorking, forMs: timerMs, at, onDone: next })

  function change(more: Partial<ReaderSettings>) {
    const changed = { ...settings, ...more }
    setSettings(changed)
    keepReaderSettings(changed)
  }
  function act(role: KeyRole) {
    if (role === 'pause') bench.pause()
    else if (role === 'back') bench.back(settings.stride)
    else if (isDone) finish()
    else next()
  }
  function finish() {
    bench.keepNow()
    props.onFinish()
  }
  const side = useSide(props.onEscape, { settings, onRole: act })
  return {
    ...{
      format,
      settings,
      change,
      bench,
      at,
      clock,
      isDone,
      tell,
      placed,
      step,
      spoken,
      side,
      act,
    },
    inHand: settings.stride === 'step' ? (step ?? 0) : undefined,
    isTimed,
    toggleTimed: () => setTimed(!isTimed),
    /** What the timer counts down, while it does. */
    drainMs: isTimed && isWorking ? timerMs : undefined,
  }
}

/** What the side shows, whether a key is being bound, and how Escape steps back out of both. */
function useSide(
  onEscape: RefObject<() => boolean>,
  keys: Readonly<{ settings: ReaderSettings; onRole: (role: KeyRole) => void }>,
) {
  const [view, setView] = useState<SideView>('piece')
  const [isLearning, setLearning] = useState(false)
  useReaderKeys({ ...keys, isLearning })
  useEffect(() => {
    onEscape.current = () => {
      if (isLearning) setLearning(false)
      else if (view !== 'piece') setView('piece')
      else return false
      return true
    }
  }, [onEscape, isLearning, view])
  return { view, setView, isLearning, setLearning }
}
