import { describe, expect, it } from 'vitest'
import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { blockChart } from '../../../shared-core/chart/block-chart.ts'
import type { StitchKind } from '../../../shared-core/chart/chart.ts'
import { readDesign } from '../../../shared-core/design/read-design.ts'
import { designOf, panelOf } from './a-design.ts'

const million = (stitch: StitchKind) =>
  designOf([panelOf(blockChart(stitch, { columns: 1000, rows: 1000 }))])

/** Reads a design; `isCancelled` is told how often it was asked before and when. */
function readAsking(body: ReturnType<typeof designOf>, stopAt: number) {
  const askedMs = [performance.now()]
  const result = readDesign(body, {
    ...referenceTables,
    isCancelled: () => {
      askedMs.push(performance.now())
      return askedMs.length > stopAt
    },
  })
  askedMs.push(performance.now())
  return { result, askedMs }
}

describe('a reading of a million beads that is cancelled', () => {
  it.each(['brick', 'peyote', 'square'] as const)(
    'is asked whether it is still wanted all along, never long apart, in %s',
    (stitch) => {
      const { result, askedMs } = readAsking(million(stitch), Number.POSITIVE_INFINITY)
      expect(result.ok && result.value.beads).toBe(1_000_000)
      const gaps = askedMs.slice(1).map((ms, at) => ms - (askedMs[at] ?? 0))
      const allMs = gaps.reduce((sum, ms) => sum + ms, 0)
      expect(gaps.length).toBeGreaterThan(200)
      // Held against the whole, so that a busy machine changes nothing: each gap is a small part of it.
      expect(Math.max(...gaps) / allMs).toBeLessThan(0.35)
    },
    60_000,
  )

  it.each([2, 10, 60, 200, 400, 700])(
    'stops at once when it is asked the %ith time',
    (stopAt) => {
      const { result, askedMs } = readAsking(million('brick'), stopAt)
      expect(result).toMatchObject({ ok: false, error: { code: 'cancelled' } })
      // Never asked again, and nothing more done: one question, then the answer.
      expect(askedMs).toHaveLength(stopAt + 2)
      const afterMs = (askedMs.at(-1) ?? 0) - (askedMs.at(-2) ?? 0)
      expect(afterMs).toBeLessThan(100)
    },
    60_000,
  )
})

describe('a fault in a reading', () => {
  it('is not taken for a cancellation', () => {
    const isCancelled = () => {
      throw new TypeError('a slip')
    }
    const body = designOf([panelOf(blockChart('brick', { columns: 4, rows: 4 }))])
    expect(() => readDesign(body, { ...referenceTables, isCancelled })).toThrow('a slip')
  })
})
