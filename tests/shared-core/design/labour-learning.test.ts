import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  collectiveEstimates,
  credibleMean,
} from '../../../shared-core/design/labour-credibility.ts'
import { type LoggedSession, learnPace } from '../../../shared-core/design/labour-learning.ts'
import { referencePace } from '../../../shared-core/design/labour-pace.ts'
import {
  huberLocation,
  madScale,
  median,
  theilSen,
} from '../../../shared-core/design/labour-robust.ts'

type Vector = Readonly<{
  id: string
  inputs: Record<string, unknown>
  expected: Record<string, unknown>
  tolerance: number
}>

const vectors: readonly Vector[] = JSON.parse(
  readFileSync(new URL('../../fixtures/vectors/labour_estimates.json', import.meta.url), 'utf8'),
)

function named(prefix: string): readonly Vector[] {
  const found = vectors.filter(({ id }) => id.startsWith(prefix))
  expect(found.length).toBeGreaterThan(0)
  return found
}

function stitching(seconds: number, beads = 100): LoggedSession {
  return { work: 'brick', beads, rows: 0, units: 0, seconds }
}

describe('the published labour estimates', () => {
  it('draw a mean towards a prior by n / (n + k)', () => {
    for (const { inputs, expected } of named('credibility')) {
      const sessions = inputs['sessions'] as readonly number[]
      const mean =
        sessions.reduce((sum, minutes) => sum + minutes, 0) / Math.max(1, sessions.length)
      const { estimate, weight } = credibleMean({
        mean,
        count: sessions.length,
        prior: inputs['prior_mean'] as number,
        priorWeight: inputs['k'] as number,
      })
      expect(weight).toBeCloseTo(expected['Z'] as number, 7)
      expect(estimate).toBeCloseTo(expected['estimate'] as number, 7)
    }
  })

  it('let groups lend each other strength', () => {
    for (const { inputs, expected } of named('buhlmann-straub')) {
      const groups = inputs['groups'] as Record<string, readonly number[]>
      const found = collectiveEstimates(Object.values(groups))
      expect(found?.within).toBeCloseTo(expected['within'] as number, 7)
      expect(found?.between).toBeCloseTo(expected['between'] as number, 6)
      expect(found?.k).toBeCloseTo(expected['k'] as number, 7)
      expect(found?.collective).toBeCloseTo(expected['collective'] as number, 6)
      const estimates = Object.values(expected['estimate'] as Record<string, number>)
      const trust = Object.values(expected['Z'] as Record<string, number>)
      estimates.forEach((estimate, at) => {
        expect(found?.estimates[at]?.estimate).toBeCloseTo(estimate, 6)
        expect(found?.estimates[at]?.weight).toBeCloseTo(trust[at] ?? 0, 7)
      })
    }
  })

  it('lay a line that one wild session does not move', () => {
    for (const { inputs, expected } of named('theil-sen')) {
      const x = inputs['x'] as readonly number[]
      const y = inputs['y'] as readonly number[]
      const line = theilSen(x.map((value, at) => ({ x: value, y: y[at] ?? 0 })))
      expect(line?.slope).toBeCloseTo(expected['slope'] as number, 7)
      expect(line?.intercept).toBeCloseTo(expected['intercept_median'] as number, 7)
    }
  })

  it('centre figures robustly', () => {
    for (const { inputs, expected } of named('huber-location')) {
      const y = inputs['y'] as readonly number[]
      expect(madScale(y)).toBeCloseTo(expected['scale'] as number, 7)
      expect(huberLocation(y, (inputs['k'] as number | undefined) ?? 1.345)).toBeCloseTo(
        expected['location'] as number,
        5,
      )
    }
  })
})

describe('a learnt pace', () => {
  it('is the reference pace without sessions', () => {
    expect(learnPace([], referencePace)).toEqual(referencePace)
  })

  it('moves towards the workshop as sessions agree, and is measured', () => {
    // The reference takes 750 s for 100 beads of brick; this workshop takes 600.
    const pace = (count: number) =>
      learnPace(
        Array.from({ length: count }, () => stitching(600)),
        referencePace,
      ).perBeadS.brick
    expect(pace(1).value).toBeGreaterThan(6)
    expect(pace(1).value).toBeLessThan(7.5)
    expect(pace(20).value).toBeCloseTo(6, 0)
    expect(pace(20).basis).toBe('measured')
    expect(pace(20).high - pace(20).low).toBeLessThan(pace(1).high - pace(1).low)
  })

  it('is hardly moved by the day the phone rang', () => {
    const calm = Array.from({ length: 8 }, (_, at) => stitching(590 + 5 * at))
    const before = learnPace(calm, referencePace).perBeadS.brick.value
    const after = learnPace([...calm, stitching(6000)], referencePace).perBeadS.brick.value
    expect(after / before).toBeGreaterThan(0.95)
    expect(after / before).toBeLessThan(1.05)
  })

  it('lends what is learnt in one stitch to another by the first session of it', () => {
    const fast = Array.from({ length: 10 }, () => stitching(375))
    const peyote: LoggedSession = { ...stitching(750), work: 'peyote' }
    const alone = learnPace([peyote], referencePace).perBeadS.peyote.value
    const along = learnPace([...fast, peyote], referencePace).perBeadS.peyote.value
    expect(along).toBeLessThan(alone)
  })

  it('learns set-up and finishing by the unit and leaves stitches without sessions alone', () => {
    const sessions: LoggedSession[] = Array.from({ length: 12 }, () => ({
      work: 'finishing',
      beads: 0,
      rows: 0,
      units: 2,
      seconds: 1200,
    }))
    const pace = learnPace(sessions, referencePace)
    expect(pace.finishingS.value).toBeLessThan(800)
    expect(pace.finishingS.basis).toBe('measured')
    expect(pace.perBeadS.brick).toEqual(referencePace.perBeadS.brick)
  })

  it('leaves out sessions without time or work', () => {
    const empty = [stitching(0), stitching(600, 0), { ...stitching(600), work: 'set-up' as const }]
    expect(learnPace(empty, referencePace)).toEqual(referencePace)
  })

  it('keeps low, value and high in order whatever is logged', () => {
    const session = fc.record({
      work: fc.constantFrom('brick', 'peyote', 'strand', 'set-up', 'finishing'),
      beads: fc.integer({ min: 0, max: 5000 }),
      rows: fc.integer({ min: 0, max: 200 }),
      units: fc.integer({ min: 0, max: 20 }),
      seconds: fc.integer({ min: 0, max: 100_000 }),
    }) as fc.Arbitrary<LoggedSession>
    fc.assert(
      fc.property(fc.array(session, { maxLength: 20 }), (sessions) => {
        const pace = learnPace(sessions, referencePace)
        for (const spread of [pace.setUpS, pace.finishingS, ...Object.values(pace.perBeadS)]) {
          expect(spread.low).toBeLessThanOrEqual(spread.value)
          expect(spread.value).toBeLessThanOrEqual(spread.high)
          expect(spread.low).toBeGreaterThan(0)
        }
      }),
    )
  })
})

describe('robust figures', () => {
  it('have a middle between the two middle ones of an even number', () => {
    expect(median([4, 1, 3, 2])).toBe(2.5)
    expect(() => median([])).toThrow(RangeError)
  })
})
