import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { countBeads } from '../../../shared-core/chart/count-slots.ts'
import { readDesign } from '../../../shared-core/design/read-design.ts'
import { lay } from '../stitches/lay.ts'
import { randomCharts } from '../stitches/random-charts.ts'
import { replayRoute } from '../stitches/replay-route.ts'
import { designOf, panelOf, read, strandOf } from './a-design.ts'
import { offLoomStitches } from './off-loom-stitches.ts'
import { block, diamond } from './small-charts.ts'

describe('a reading', () => {
  it('counts every cell and every copy, by slot', () => {
    const reading = read(designOf([panelOf(diamond, { copies: 2 })]))
    expect(reading.beads).toBe(28)
    expect(reading.counts.map(({ label, count }) => `${count}${label}`)).toEqual(['20A', '8B'])
    // 20 beads of 200 a gram weigh 100 mg.
    expect(reading.counts[0]?.massMg.value).toBe(100)
  })

  it('has the size of its beads: four across, five rows with a thread between', () => {
    const { widthMm, heightMm } = read(designOf([panelOf(diamond)]))
    expect(widthMm.value).toBeCloseTo(4 * 1.6, 3)
    expect(heightMm.value).toBeCloseTo(5 * 1.3 + 4 * 0.65 * 0.17, 3)
    expect(widthMm.low).toBeLessThan(widthMm.value)
  })

  it('begins with a length of thread and ends with both ends woven in and cut', () => {
    const [part] = read(designOf([panelOf(diamond)])).parts
    const kinds = part?.events.map(({ kind }) => kind) ?? []
    expect(kinds[0]).toBe('add-thread')
    expect(kinds.filter((kind) => kind === 'cut')).toHaveLength(2)
    expect(kinds.at(-1)).toBe('cut')
    expect(kinds.filter((kind) => kind === 'knot')).toHaveLength(4)
  })

  it('says the same of passes as its events do', () => {
    const [part] = read(designOf([panelOf(diamond)])).parts
    const counted = new Array<number>(14).fill(0)
    for (const event of part?.events ?? []) {
      const beads =
        event.kind === 'pick-up' ? event.beads : event.kind === 'pass' ? [event.bead] : []
      for (const bead of beads) counted[bead] = (counted[bead] ?? 0) + 1
    }
    expect(Array.from(part?.passes ?? [])).toEqual(counted)
  })

  it.each(offLoomStitches)('is one continuous thread with its ends woven in, in %s', (stitch) => {
    fc.assert(
      fc.property(randomCharts(stitch), fc.integer({ min: 300, max: 900 }), (chart, longest) => {
        const body = designOf([panelOf(chart, { route: { workingLengthMm: longest } })])
        const [part] = read(body).parts
        const { faults, passes } = replayRoute(part?.events ?? [], lay(chart).ground)
        expect(faults).toEqual([])
        expect(passes).toEqual(Array.from(part?.passes ?? []))
      }),
      { numRuns: 120 },
    )
  })

  it('reads the reference check: about 5 mm of thread a bead in brick of cylinder 11/0', () => {
    const chart = block('brick', 40, 40)
    const [part] = read(designOf([panelOf(chart)])).parts
    const perBead = (part?.thread.inPieceMm.value ?? 0) / countBeads(chart)
    expect(perBead).toBeGreaterThan(4.7)
    expect(perBead).toBeLessThan(5.3)
  })
})

describe('labour', () => {
  it('is set-up, a time a bead by stitch, a time a row, and finishing', () => {
    const { labour, parts } = read(designOf([panelOf(diamond, { copies: 2 })]))
    // 14 beads of 7.5 s and 5 rows of 8 s.
    expect(parts[0]?.labourS.value).toBe(145)
    expect(labour.stitchingS.value).toBe(290)
    expect(labour.totalS.value).toBe(420 + 290 + 1200)
    expect(labour.totalS.low).toBeLessThan(labour.totalS.value)
  })

  it('takes the maker’s own figures for set-up and finishing as they are', () => {
    const { labour } = read(designOf([panelOf(diamond)], { setUpS: 60, finishingS: 90 }))
    expect(labour.setUpS).toEqual({ value: 60, low: 60, high: 60, basis: 'exact' })
    expect(labour.finishingS.value).toBe(90)
  })
})

describe('a design that cannot be read', () => {
  const refusal = (body: Parameters<typeof readDesign>[0]) => {
    const result = readDesign(body, referenceTables)
    return result.ok ? undefined : `${result.error.code} ${result.error.field}`
  }

  it('is refused by the field that names something unknown', () => {
    const panel = panelOf(diamond)
    expect(refusal(designOf([panel], { threadId: 'gold' }))).toBe('unknown-thread threadId')
    expect(refusal(designOf([panel], { needleSize: '99' }))).toBe('unknown-needle needleSize')
    expect(refusal(designOf([{ ...panel, formId: 'x' }]))).toBe('unknown-form parts.0.formId')
    expect(refusal(designOf([strandOf('3A banana')]))).toBe('strand-unreadable parts.0.beads')
    const chart = { stitch: 'brick', rows: [{ start: 0, cells: '3A x' }] } as const
    expect(refusal(designOf([{ ...panel, chart }]))).toBe('chart-unreadable parts.0.chart')
    expect(refusal(designOf([panel, panel]))).toBe('duplicate-part parts.1.id')
    expect(refusal(designOf([strandOf('90000A', { copies: 100 })]))).toBe(
      'too-many-strand-beads parts',
    )
    const wide = { stitch: 'brick', rows: [{ start: 0, cells: '9999999A' }] } as const
    expect(refusal(designOf([{ ...panel, chart: wide }]))).toBe('chart-too-large parts.0.chart')
  })
})

describe('a reading that is no longer wanted', () => {
  it('stops between parts and refuses', () => {
    const body = designOf([panelOf(diamond), strandOf('3A')])
    let asked = 0
    const isCancelled = () => {
      asked += 1
      return asked > 1
    }
    const result = readDesign(body, { ...referenceTables, isCancelled })
    expect(result.ok ? 'read' : result.error.code).toBe('cancelled')
  })
})
