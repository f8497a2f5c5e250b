import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { assemble } from '../../../renderer/rooms/designs/assembly/assemble.ts'
import {
  advanceBy,
  createPlayer,
  type Reel,
  stepAt,
} from '../../../renderer/rooms/designs/thread/player.ts'
import { lane, threadPath } from '../../../renderer/rooms/designs/thread/thread-path.ts'
import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { readDesign } from '../../../shared-core/design/read-design.ts'
import { routeLine, THROUGH } from '../../../shared-core/route/route-line.ts'
import { tidewrack } from './sample-body.ts'

function reel(): Reel {
  const body = tidewrack()
  const read = readDesign(body, referenceTables)
  if (!read.ok) throw new Error(read.error.message)
  const [part] = read.value.parts
  const placed = assemble({ body, tables: referenceTables, looks: [] })?.parts[0]
  if (part === undefined || placed === undefined) throw new Error('expected a panel')
  return { line: routeLine(part.route, placed.geometry, { own: placed.own }), steps: part.steps }
}

beforeEach(() => {
  vi.stubGlobal('cancelAnimationFrame', () => undefined)
  vi.stubGlobal('requestAnimationFrame', () => 1)
})
afterEach(() => vi.unstubAllGlobals())

describe('createPlayer', () => {
  it('shows the whole line of what is loaded', () => {
    const player = createPlayer()
    const loaded = reel()
    player.load(loaded)
    expect(player.read()).toEqual({
      event: loaded.line.upTo.length - 1,
      reach: loaded.line.count,
      isPlaying: false,
    })
  })

  it('steps through every step from the first to the last and stays there', () => {
    const player = createPlayer()
    const loaded = reel()
    player.load(loaded)
    player.toEvent(-1)
    for (const [at, step] of loaded.steps.entries()) {
      player.step(1)
      expect(player.read().event).toBe(step.toEvent)
      expect(stepAt(loaded.steps, player.read().event)).toBe(at)
    }
    player.step(1)
    expect(player.read().event).toBe(loaded.steps.at(-1)?.toEvent)
  })

  it('goes back to before the first step, and no further', () => {
    const player = createPlayer()
    player.load(reel())
    player.toEvent(-1)
    player.step(1)
    player.step(-1)
    player.step(-1)
    expect(player.read()).toEqual({ event: -1, reach: 0, isPlaying: false })
  })

  it('takes one step at a time where motion is not wanted', () => {
    vi.useFakeTimers()
    vi.stubGlobal('matchMedia', () => ({ matches: true }))
    const player = createPlayer()
    const loaded = reel()
    player.load(loaded)
    player.play()
    expect(player.read().event).toBe(-1)
    vi.advanceTimersByTime(3_000)
    expect(player.read().event).toBe(loaded.steps[1]?.toEvent)
    player.pause()
    vi.advanceTimersByTime(3_000)
    expect(player.read()).toMatchObject({ event: loaded.steps[1]?.toEvent, isPlaying: false })
    vi.useRealTimers()
  })

  it('is paused when nobody listens any more', () => {
    vi.stubGlobal('matchMedia', () => ({ matches: false }))
    const player = createPlayer()
    player.load(reel())
    const stop = player.listen(() => undefined)
    player.play()
    expect(player.read().isPlaying).toBe(true)
    stop()
    expect(player.read().isPlaying).toBe(false)
  })
})

describe('advanceBy', () => {
  it('comes to the end of the line after its length, in steps of any size', () => {
    const { line } = reel()
    for (const mm of [0.05, 0.7, 40]) {
      let reach = 0
      let before = -1
      while (reach < line.count) {
        expect(reach).toBeGreaterThan(before)
        before = reach
        reach = advanceBy(line, reach, mm)
      }
      expect(reach).toBe(line.count)
    }
  })
})

describe('threadPath', () => {
  it('sets passes beside each other: middle, one side, the other', () => {
    expect([0, 1, 2, 3, 4].map(lane)).toEqual([0, 1, -1, 2, -2])
  })

  it('moves passes across their hole and leaves all else in place', () => {
    const { line } = reel()
    const path = threadPath(line, 0.17)
    for (let at = 1; at < line.count; at += 1) {
      if (line.comesBy[at] !== THROUGH) continue
      // Brick holes stand, so passes move sideways and keep their length.
      expect(path.yMm[at]).toBeCloseTo(line.yMm[at] ?? 0, 5)
      const aside = Math.abs(lane(line.passOf[at] ?? 0)) * 1.5 * 0.17
      expect(Math.abs((path.xMm[at] ?? 0) - (line.xMm[at] ?? 0))).toBeCloseTo(aside, 4)
    }
  })
})
