import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  restClock,
  startClock,
  stepClock,
  tickClock,
  togglePause,
  type WorkClock,
} from '../../../shared-core/bench/work-clock.ts'

const RULES = { idleMs: 300_000, lineMs: 40_000 }

function run(clock: WorkClock, ticks: number, rules = RULES): WorkClock {
  let now = clock
  for (let tick = 0; tick < ticks; tick += 1) now = tickClock(now, 1_000, rules)
  return now
}

describe('a work clock', () => {
  it('counts while the work goes on, from what was counted before', () => {
    expect(run(startClock(60_000), 30).workedMs).toBe(90_000)
  })

  it('counts nothing while paused, and goes on with the next step', () => {
    const paused = togglePause(run(startClock(0), 10))
    expect(run(paused, 100).workedMs).toBe(10_000)
    expect(run(stepClock(paused), 5).workedMs).toBe(15_000)
    expect(togglePause(paused).state).toBe('working')
  })

  it('stands after five minutes without a step, and counts of them what the row takes', () => {
    const idle = run(startClock(0), 400)
    expect(idle.state).toBe('idle')
    expect(idle.workedMs).toBe(RULES.lineMs)
  })

  it('gives a long row at least twice its time before it stands', () => {
    const rules = { idleMs: 60_000, lineMs: 200_000 }
    expect(run(startClock(0), 399, rules).state).toBe('working')
    expect(run(startClock(0), 400, rules).state).toBe('idle')
    expect(run(startClock(0), 400, rules).workedMs).toBe(200_000)
  })

  it('does not count the time a machine slept', () => {
    const slept = tickClock(run(startClock(0), 10), 8 * 3_600_000, RULES)
    expect(slept).toMatchObject({ state: 'idle', workedMs: 10_000 })
  })

  it('counts on in a hidden window, whose ticks come once a minute', () => {
    expect(tickClock(startClock(0), 60_000, RULES)).toMatchObject({
      state: 'working',
      workedMs: 60_000,
    })
  })

  it('runs towards a rest, which a pause gives as well', () => {
    const worked = run(startClock(0), 120)
    expect(worked.sinceRestMs).toBe(120_000)
    expect(restClock(worked).sinceRestMs).toBe(0)
    expect(togglePause(worked).sinceRestMs).toBe(0)
  })

  it('never counts more than has passed, nor takes off what was counted before the last step', () => {
    const acts = fc.array(
      fc.oneof(
        fc.record({ act: fc.constant('tick' as const), ms: fc.integer({ min: 1, max: 100_000 }) }),
        fc.record({ act: fc.constantFrom('step' as const, 'pause' as const), ms: fc.constant(0) }),
      ),
    )
    fc.assert(
      fc.property(fc.nat(1_000_000), acts, (before, list) => {
        let clock = startClock(before)
        let passed = before
        let atStep = before
        for (const { act, ms } of list) {
          passed += ms
          if (act === 'tick') clock = tickClock(clock, ms, RULES)
          else clock = act === 'step' ? stepClock(clock) : togglePause(clock)
          if (act === 'step') atStep = clock.workedMs
          expect(clock.workedMs).toBeGreaterThanOrEqual(atStep)
          expect(clock.workedMs).toBeLessThanOrEqual(passed)
        }
      }),
    )
  })
})
