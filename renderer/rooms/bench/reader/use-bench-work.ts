import { useCallback, useEffect, useMemo, useRef, useState } from 'react'
import {
  goBack,
  goOn,
  lineOf,
  placeOf,
  type ReaderMap,
  type ReaderPlace,
  type ReaderStride,
  stepOf,
  unitsDone,
} from '../../../../shared-core/bench/reader-place.ts'
import {
  estimateUpTo,
  type PaceSeen,
  paceAtStart,
} from '../../../../shared-core/bench/time-left.ts'
import {
  restClock,
  startClock,
  stepClock,
  tickClock,
  togglePause,
  type WorkClock,
} from '../../../../shared-core/bench/work-clock.ts'

/** What is kept, so that nothing is lost when the studio closes or fails. */
export type Kept = Readonly<{ place: ReaderPlace; workedS: number; unitsDone: number }>

/** Where the work stands. */
export type BenchWork = Readonly<{
  at: number
  clock: WorkClock
  /** Work made row by row, s by the pace it is reckoned at; what was jumped over is not in it. */
  madeS: number
  /** Time that was counted before what `madeS` tells of, s. */
  beforeS: number
}>

/** The pace as this make has shown it. */
export function paceSeen({ clock, madeS, beforeS }: BenchWork): PaceSeen {
  return { workedS: Math.max(0, clock.workedMs / 1_000 - beforeS), madeS }
}

type Start = Readonly<{
  map: ReaderMap
  place: ReaderPlace
  workedS: number
  idleMin: number
  onKeep: (kept: Kept) => void
}>

const TICK_MS = 1_000
const KEEP_MS = 15_000

/**
 * The place in the work and its clock; both are kept at every move and every 15 s.
 *
 * The clock runs on while the window is hidden: she may look something up meanwhile, and a wait that
 * is too long is taken off by the rule for idle time anyway.
 */
export function useBenchWork({ map, place, workedS, idleMin, onKeep }: Start) {
  const [work, setWork] = useState<BenchWork>(() => begin(map, stepOf(map, place), workedS))
  const latest = useRef({ work, map, idleMin, onKeep })
  latest.current = { work, map, idleMin, onKeep }
  const kept = useRef(work)

  const keep = useCallback((next: BenchWork) => {
    if (next.at === kept.current.at && seconds(next) === seconds(kept.current)) return
    kept.current = next
    const { map: now, onKeep: tell } = latest.current
    tell({
      place: placeOf(now, next.at),
      workedS: seconds(next),
      unitsDone: unitsDone(now, next.at),
    })
  }, [])

  const set = useCallback((next: BenchWork) => {
    latest.current = { ...latest.current, work: next }
    setWork(next)
  }, [])

  useEffect(() => runClock(latest, set), [set])
  useEffect(() => {
    const now = () => keep(latest.current.work)
    const timer = setInterval(now, KEEP_MS)
    addEventListener('pagehide', now)
    return () => {
      clearInterval(timer)
      removeEventListener('pagehide', now)
      now()
    }
  }, [keep])

  return useMemo(() => {
    const moveTo = (at: number, isJump = true) => {
      const { work: now, map: all } = latest.current
      const clock = stepClock(now.clock)
      const madeS = isJump ? 0 : estimateUpTo(all, at) - estimateUpTo(all, now.at)
      const next = {
        ...now,
        at,
        madeS: Math.max(0, now.madeS + madeS),
        clock: at >= all.steps ? togglePause(clock) : clock,
      }
      set(next)
      keep(next)
    }
    const change = (of: (clock: WorkClock) => WorkClock) => {
      const { work: now } = latest.current
      const next = { ...now, clock: of(now.clock) }
      set(next)
      keep(next)
    }
    return {
      work,
      jump: (at: number) => moveTo(at),
      next: (stride: ReaderStride) =>
        moveTo(goOn(latest.current.map, latest.current.work.at, stride), false),
      back: (stride: ReaderStride) =>
        moveTo(goBack(latest.current.map, latest.current.work.at, stride), false),
      pause: () => change(togglePause),
      rest: () => change(restClock),
      keepNow: () => keep(latest.current.work),
    }
  }, [work, keep, set])
}

function begin(map: ReaderMap, at: number, workedS: number): BenchWork {
  const clock = startClock(workedS * 1_000)
  const seen = paceAtStart(map, at, workedS)
  return {
    at,
    clock: at >= map.steps ? togglePause(clock) : clock,
    madeS: seen.madeS,
    beforeS: workedS - seen.workedS,
  }
}

function seconds({ clock }: BenchWork): number {
  return Math.round(clock.workedMs / 1_000)
}

type Latest = { current: Readonly<{ work: BenchWork; map: ReaderMap; idleMin: number }> }

/** Lets the clock run by the machine's steady time, so that a clock put right changes nothing. */
function runClock(latest: Latest, set: (work: BenchWork) => void): () => void {
  let before = performance.now()
  const timer = setInterval(() => {
    const now = performance.now()
    const { work, map, idleMin } = latest.current
    const lineMs = (lineOf(map, work.at)?.line.estimateS ?? 0) * 1_000
    const clock = tickClock(work.clock, now - before, { idleMs: idleMin * 60_000, lineMs })
    before = now
    if (clock !== work.clock) set({ ...work, clock })
  }, TICK_MS)
  return () => clearInterval(timer)
}
