import { describe, expect, it, vi } from 'vitest'
import { type AskTurn, inTurns, pageTurns } from '../../../renderer/drawing/in-turns.ts'

/** Turns given by hand, each long enough for so many steps. */
function turnsByHand() {
  let asked: Parameters<AskTurn>[0] | undefined
  const askTurn: AskTurn = (turn) => {
    asked = turn
    return () => {
      asked = undefined
    }
  }
  const give = (steps: number) => {
    const turn = asked
    asked = undefined
    let left = steps
    turn?.(() => {
      left -= 1
      return left <= 0
    })
  }
  return { askTurn, give, isAsked: () => asked !== undefined }
}

function* counting(taken: number[], to: number): Generator<void> {
  for (let step = 1; step <= to; step += 1) {
    taken.push(step)
    yield
  }
}

describe('inTurns', () => {
  it('takes every step once and in order, as many in a turn as it has time for, and says when all is done', () => {
    const taken: number[] = []
    const done = vi.fn()
    const { askTurn, give, isAsked } = turnsByHand()
    inTurns(counting(taken, 5), done, askTurn)
    expect(taken).toEqual([])
    give(2)
    expect(taken).toEqual([1, 2])
    // A turn that is over before it begins still takes a step.
    give(0)
    expect(taken).toEqual([1, 2, 3])
    expect(done).not.toHaveBeenCalled()
    give(9)
    expect(taken).toEqual([1, 2, 3, 4, 5])
    expect(done).toHaveBeenCalledTimes(1)
    expect(isAsked()).toBe(false)
  })

  it('leaves the work where it is when that is asked, before it has begun and in its middle', () => {
    const taken: number[] = []
    const done = vi.fn()
    const { askTurn, give, isAsked } = turnsByHand()
    const leave = inTurns(counting(taken, 5), done, askTurn)
    give(2)
    leave()
    expect(isAsked()).toBe(false)
    inTurns(counting(taken, 5), done, askTurn)()
    give(9)
    expect(taken).toEqual([1, 2])
    expect(done).not.toHaveBeenCalled()
  })

  it('lets the page do other things between turns that last a few milliseconds', async () => {
    const turnOf: number[] = []
    let turn = 0
    const timer = setInterval(() => {
      turn += 1
    })
    function* slow(): Generator<void> {
      for (let step = 0; step < 12; step += 1) {
        const end = performance.now() + 2
        while (performance.now() < end);
        turnOf.push(turn)
        yield
      }
    }
    await new Promise<void>((done) => inTurns(slow(), done, pageTurns))
    clearInterval(timer)
    expect(turnOf).toHaveLength(12)
    const mostInOne = Math.max(
      ...[...new Set(turnOf)].map((at) => turnOf.filter((t) => t === at).length),
    )
    expect(mostInOne).toBeLessThanOrEqual(6)
  })
})
