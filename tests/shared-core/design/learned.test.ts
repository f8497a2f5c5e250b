import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { fromChartJson } from '../../../shared-core/chart/chart-json.ts'
import { learnPace } from '../../../shared-core/design/labour-learning.ts'
import { referencePace } from '../../../shared-core/design/labour-pace.ts'
import { learnCullRate } from '../../../shared-core/design/learn-culls.ts'
import {
  learnThreadUse,
  referenceThreadUse,
  threadAsUsed,
} from '../../../shared-core/design/learn-thread-use.ts'
import { readDesign } from '../../../shared-core/design/read-design.ts'
import { readLabour } from '../../../shared-core/design/read-labour.ts'
import { sessionWork } from '../../../shared-core/design/session-work.ts'
import { estimated, measured } from '../../../shared-core/units/spread.ts'
import { designOf, panelOf, strandOf } from './a-design.ts'

const table = estimated(0.01, 0.02, 0.03)
const width = ({ low, high }: Readonly<{ low: number; high: number }>) => high - low
const anyCounts = fc.array(
  fc
    .record({
      handled: fc.integer({ min: 1, max: 5_000 }),
      share: fc.double({ min: 0, max: 0.3, noNaN: true }),
    })
    .map(({ handled, share }) => ({ handled, culled: Math.floor(handled * share) })),
  { minLength: 1, maxLength: 12 },
)

describe('learnCullRate', () => {
  it('is the table’s without counts, and where the table gives no range', () => {
    expect(learnCullRate(table, [])).toEqual(table)
    const sure = estimated(0.02, 0.02, 0.02)
    expect(learnCullRate(sure, [{ handled: 500, culled: 50 }])).toEqual(sure)
  })

  it('lies between the table’s rate and the share that was counted', () => {
    fc.assert(
      fc.property(anyCounts, (counts) => {
        const handled = counts.reduce((sum, count) => sum + count.handled, 0)
        const share = counts.reduce((sum, count) => sum + count.culled, 0) / handled
        const rate = learnCullRate(table, counts)
        expect(rate.basis).toBe('measured')
        expect(rate.value).toBeGreaterThanOrEqual(Math.min(share, table.value) - 1e-12)
        expect(rate.value).toBeLessThanOrEqual(Math.max(share, table.value) + 1e-12)
        expect(rate.low).toBeLessThanOrEqual(rate.value)
        expect(rate.high).toBeGreaterThanOrEqual(rate.value)
      }),
    )
  })

  it('comes nearer to the counts, and narrows, the more beads agree', () => {
    const rates = [1, 4, 16, 64].map((times) =>
      learnCullRate(table, [{ handled: 200 * times, culled: 12 * times }]),
    )
    for (const [at, rate] of rates.entries()) {
      const before = rates[at - 1]
      if (before === undefined) continue
      expect(0.06 - rate.value).toBeLessThan(0.06 - before.value)
      expect(width(rate) / rate.value).toBeLessThan(width(before) / before.value)
    }
    expect(rates.at(-1)?.value).toBeCloseTo(0.06, 2)
  })

  it('leaves out what cannot be: more put aside than handled', () => {
    expect(learnCullRate(table, [{ handled: 5, culled: 9 }])).toEqual(table)
  })
})

describe('learnThreadUse', () => {
  const session = (ratio: number) => ({ usedMm: 2_000 * ratio, reckonedMm: 2_000 })

  it('is 1 without sessions, moves to the workshop’s and narrows as they agree', () => {
    expect(learnThreadUse([])).toEqual(referenceThreadUse)
    const learnt = (count: number) =>
      learnThreadUse(Array.from({ length: count }, () => session(1.1)))
    expect(learnt(1).value).toBeGreaterThan(1)
    expect(learnt(1).value).toBeLessThan(1.1)
    expect(learnt(30).value).toBeCloseTo(1.09, 2)
    expect(width(learnt(30))).toBeLessThan(width(learnt(1)))
    expect(learnt(1).basis).toBe('measured')
  })

  it('leaves out slips of the ruler', () => {
    expect(learnThreadUse([session(3), session(0.2), session(0)])).toEqual(referenceThreadUse)
  })
})

describe('threadAsUsed', () => {
  const thread = {
    inPieceMm: estimated(1_800, 2_000, 2_200),
    cutMm: [1_300, 1_200],
    inWorkMm: [1_100, 900],
    spoolMm: estimated(2_300, 2_500, 2_700),
  }

  it('changes nothing before anything is learnt', () => {
    expect(threadAsUsed(thread, referenceThreadUse)).toBe(thread)
  })

  it('makes piece and cuts longer by the same amount, each length by its own share of it', () => {
    const used = threadAsUsed(thread, measured(1.04, 1.05, 1.06))
    expect(used.inPieceMm.value).toBe(2_100)
    expect(used.cutMm).toEqual([1_355, 1_245])
    expect(used.inWorkMm).toEqual([1_155, 945])
    expect(used.spoolMm.value).toBe(2_600)
    expect(used.inPieceMm.high - used.inPieceMm.low).toBeLessThan(400)
    expect(used.inPieceMm.basis).toBe('measured')
  })

  it('keeps low, value and high in order', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.8, max: 1.2, noNaN: true }),
        fc.double({ min: 0, max: 0.1, noNaN: true }),
        (value, off) => {
          const { inPieceMm, spoolMm } = threadAsUsed(
            thread,
            measured(value * (1 - off), value, value * (1 + off)),
          )
          for (const { low, value: middle, high } of [inPieceMm, spoolMm]) {
            expect(low).toBeLessThanOrEqual(middle)
            expect(middle).toBeLessThanOrEqual(high)
          }
        },
      ),
    )
  })
})

const pair = designOf([
  panelOf(
    fromChartJson({
      stitch: 'brick',
      rows: [
        { start: 2, cells: '2A' },
        { start: 1, cells: '1A 1B 1A' },
        { start: 0, cells: '1A 2B 1A' },
        { start: 1, cells: '1A 1B 1A' },
        { start: 2, cells: '2A' },
      ],
    }),
    { copies: 2 },
  ),
  strandOf('12A 1B', { copies: 4 }),
])

describe('a reading of a workshop that has learnt', () => {
  const read = (options: object) => {
    const reading = readDesign(pair, { ...referenceTables, ...options })
    if (!reading.ok) throw new Error(reading.error.message)
    return reading.value
  }
  const plain = read({})

  it('reckons its labour from its work at the workshop’s pace', () => {
    expect(readLabour(plain.work, pair, referencePace)).toEqual(plain.labour)
    const timed = { work: plain.work, own: {}, units: 2, seconds: 2 * plain.labour.totalS.value }
    const sessions = sessionWork({ ...timed, seconds: timed.seconds / 2 }, referencePace)
    const pace = learnPace(Array.from({ length: 20 }, () => sessions).flat(), referencePace)
    const quick = read({ pace })
    expect(quick.labour).toEqual(readLabour(plain.work, pair, pace))
    expect(quick.labour.totalS.value / plain.labour.totalS.value).toBeCloseTo(0.5, 1)
    expect(quick.labour.totalS.basis).toBe('measured')
  })

  it('needs more beads where more are put aside, and more thread where more is used', () => {
    const careful = read({
      cullRates: { 'cylinder-11/0': measured(0.1, 0.12, 0.14) },
      threadUse: measured(1.08, 1.1, 1.12),
    })
    for (const [at, slot] of careful.counts.entries()) {
      expect(slot.count).toBe(plain.counts[at]?.count)
      expect(slot.massMg).toEqual(plain.counts[at]?.massMg)
      expect(slot.needMg.value).toBeGreaterThan(plain.counts[at]?.needMg.value ?? 0)
    }
    expect(careful.thread.spoolMm.value).toBeGreaterThan(plain.thread.spoolMm.value)
  })
})

describe('sessionWork', () => {
  const work = [
    { kind: 'brick', beads: 100, rows: 10, copies: 2 },
    { kind: 'strand', beads: 40, rows: 0, copies: 4 },
  ] as const

  it('shares all of the time out, and teaches nothing of what the maker has set herself', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 1, max: 1e6 }),
        (units, seconds) => {
          const all = sessionWork({ work, own: {}, units, seconds }, referencePace)
          expect(all.map((one) => one.work)).toEqual(['set-up', 'brick', 'strand', 'finishing'])
          expect(all.reduce((sum, one) => sum + one.seconds, 0)).toBeCloseTo(seconds, 4)
          const own = sessionWork(
            { work, own: { setUpS: 60, finishingS: 60 }, units, seconds },
            referencePace,
          )
          expect(own.map((one) => one.work)).toEqual(['brick', 'strand'])
        },
      ),
    )
  })

  it('gives nothing without time or units', () => {
    expect(sessionWork({ work, own: {}, units: 0, seconds: 60 }, referencePace)).toEqual([])
    expect(sessionWork({ work, own: {}, units: 2, seconds: 0 }, referencePace)).toEqual([])
  })
})
