/**
 * Working time as it runs, ms. `workedMs` is what counts; `sinceStepMs` has run since the last step,
 * `sinceRestMs` since the last rest.
 */
export type WorkClock = Readonly<{
  state: 'working' | 'paused' | 'idle'
  workedMs: number
  sinceStepMs: number
  sinceRestMs: number
}>

/** What ends counting: no step for `idleMs`; of that time `lineMs`, what the line in hand takes, still counts. */
export type ClockRules = Readonly<{ idleMs: number; lineMs: number }>

/** A tick this long means that the machine slept; chosen by us, above the minute of a hidden window's timers. */
const SLEPT_MS = 90_000

/** A clock that goes on from time worked before. */
export function startClock(workedMs: number): WorkClock {
  return { state: 'working', workedMs, sinceStepMs: 0, sinceRestMs: 0 }
}

/**
 * Lets time pass. Counts only while working. A line that takes long does not make idle: the limit is
 * at least twice what the line takes. Time in which nothing was done is taken off again.
 */
export function tickClock(clock: WorkClock, elapsedMs: number, rules: ClockRules): WorkClock {
  if (clock.state !== 'working' || elapsedMs <= 0) return clock
  if (elapsedMs >= SLEPT_MS) return stop(clock, 'idle')
  const sinceStepMs = clock.sinceStepMs + elapsedMs
  const workedMs = clock.workedMs + elapsedMs
  if (sinceStepMs < Math.max(rules.idleMs, 2 * rules.lineMs)) {
    return { ...clock, workedMs, sinceStepMs, sinceRestMs: clock.sinceRestMs + elapsedMs }
  }
  const uncountedMs = Math.max(0, sinceStepMs - rules.lineMs)
  return stop({ ...clock, workedMs: Math.max(0, workedMs - uncountedMs) }, 'idle')
}

/** A step was made: a clock that stood goes on. */
export function stepClock(clock: WorkClock): WorkClock {
  return { ...clock, state: 'working', sinceStepMs: 0 }
}

/** Stops the clock by hand, or lets it go on. */
export function togglePause(clock: WorkClock): WorkClock {
  return clock.state === 'working' ? stop(clock, 'paused') : stepClock(clock)
}

/** Eyes and hands were rested, or the reminder was put away. */
export function restClock(clock: WorkClock): WorkClock {
  return { ...clock, sinceRestMs: 0 }
}

function stop(clock: WorkClock, state: 'paused' | 'idle'): WorkClock {
  return { ...clock, state, sinceStepMs: 0, sinceRestMs: 0 }
}
