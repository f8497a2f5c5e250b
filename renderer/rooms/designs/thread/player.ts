import type { BenchStep } from '../../../../shared-core/route/route.ts'
import { BEGINS, type RouteLine, stretchMm } from '../../../../shared-core/route/route-line.ts'

/** What is played: a line, and the steps its events belong to. */
export type Reel = Readonly<{ line: RouteLine; steps: readonly BenchStep[] }>

/** Where the needle is: the last event begun, -1 before the first, and the points laid, the last in part. */
export type Playing = Readonly<{ event: number; reach: number; isPlaying: boolean }>

/** How fast the needle goes while it is played, mm a second. */
export const PACE_MM = 14
/** Each step is shown so long where motion is not wanted, ms. */
const STILL_MS = 1_400

/** Plays a thread's journey: what moves it, what hears of it, and where it stands. */
export type Player = Readonly<{
  load: (reel: Reel) => void
  play: () => void
  pause: () => void
  /** Lays everything up to the end of an event; -1 lays nothing. */
  toEvent: (event: number) => void
  /** To the end of the next or previous step. */
  step: (by: 1 | -1) => void
  read: () => Playing
  listen: (onChange: () => void) => () => void
}>

/** A player with nothing in it, whole line laid once something is. */
export function createPlayer(): Player {
  let reel: Reel | undefined
  let playing: Playing = { event: -1, reach: 0, isPlaying: false }
  let frame = 0
  let timer: ReturnType<typeof setInterval> | undefined
  const listeners = new Set<() => void>()

  function set(next: Partial<Playing>): void {
    playing = { ...playing, ...next }
    for (const listener of listeners) listener()
  }

  function stop(): void {
    cancelAnimationFrame(frame)
    clearInterval(timer)
  }

  function toEvent(event: number): void {
    if (reel === undefined) return
    const last = Math.min(event, reel.line.upTo.length - 1)
    set({ event: last, reach: reel.line.upTo[last] ?? 0 })
  }

  function step(by: 1 | -1): void {
    if (reel === undefined) return
    const at = stepAt(reel.steps, playing.event) + by
    toEvent(reel.steps[Math.min(at, reel.steps.length - 1)]?.toEvent ?? -1)
  }

  function glide(line: RouteLine): void {
    let before = performance.now()
    const advance = (now: number) => {
      const mm = ((now - before) / 1000) * PACE_MM
      before = now
      const reach = advanceBy(line, playing.reach, mm)
      if (reach >= line.count) return pauseAtEnd(line)
      set({ event: line.eventOf[Math.floor(reach)] ?? playing.event, reach })
      frame = requestAnimationFrame(advance)
    }
    frame = requestAnimationFrame(advance)
  }

  function pauseAtEnd(line: RouteLine): void {
    toEvent(line.upTo.length - 1)
    pause()
  }

  function stepOn(line: RouteLine): void {
    timer = setInterval(() => {
      step(1)
      if (isAtEnd(line)) pause()
    }, STILL_MS)
  }

  function play(): void {
    if (reel === undefined) return
    const { line } = reel
    stop()
    if (isAtEnd(line)) toEvent(-1)
    set({ isPlaying: true })
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) stepOn(line)
    else glide(line)
  }

  function isAtEnd({ upTo }: RouteLine): boolean {
    return playing.event >= upTo.length - 1
  }

  function pause(): void {
    stop()
    set({ isPlaying: false })
  }

  return {
    load: (next) => {
      if (next.line === reel?.line) return
      reel = next
      pause()
      toEvent(next.line.upTo.length - 1)
    },
    play,
    pause,
    toEvent: (event) => {
      pause()
      toEvent(event)
    },
    step: (by) => {
      pause()
      step(by)
    },
    read: () => playing,
    listen: (onChange) => {
      listeners.add(onChange)
      return () => {
        listeners.delete(onChange)
        if (listeners.size === 0) pause()
      }
    },
  }
}

/** The reach after so many mm more; where the line begins anew the needle is there at once. */
export function advanceBy(line: RouteLine, reach: number, mm: number): number {
  let at = reach
  let left = mm
  while (at < line.count) {
    const point = Math.floor(at)
    const whole = line.comesBy[point] === BEGINS || point === 0 ? 0 : stretchMm(line, point)
    const rest = whole * (point + 1 - at)
    if (rest > left) return at + left / whole
    left -= rest
    at = point + 1
  }
  return line.count
}

/** The step an event belongs to, by halving; -1 before the first. */
export function stepAt(steps: readonly BenchStep[], event: number): number {
  let low = 0
  let high = steps.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((steps[middle]?.fromEvent ?? Number.POSITIVE_INFINITY) <= event) low = middle + 1
    else high = middle
  }
  return low - 1
}
