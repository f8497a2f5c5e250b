import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Chart, STITCH_KINDS, type StitchKind } from '../../../shared-core/chart/chart.ts'
import { countBeads } from '../../../shared-core/chart/count-slots.ts'
import { lay } from './lay.ts'
import { mirrorChart, mirrorEvents } from './mirror-chart.ts'
import { plainShapes, randomCharts } from './random-charts.ts'
import { routeText } from './route-text.ts'

/** Stitches whose thread may cross a gap: a weft under bare warps, a ladder's stack with a bead left out. */
const CROSSES_GAPS: readonly StitchKind[] = ['loom', 'ladder']

describe.each(STITCH_KINDS)('a %s route', (stitch) => {
  it('strings every bead exactly once and names those it cannot', () => {
    fc.assert(
      fc.property(randomCharts(stitch), (chart) => {
        const { replay, warnings, index } = lay(chart)
        const named = new Set(
          warnings
            .filter(({ severity }) => severity === 'impossible')
            .flatMap(({ beads }) => beads),
        )
        expect(index.count).toBe(countBeads(chart))
        replay.picked.forEach((times, bead) => {
          expect(times).toBe(named.has(bead) ? 0 : 1)
        })
      }),
      { numRuns: 300 },
    )
  })

  it('is one continuous thread that turns only where something holds it and hooks only what is there', () => {
    fc.assert(
      fc.property(randomCharts(stitch, CROSSES_GAPS.includes(stitch) ? 0 : 0.15), (chart) => {
        const { replay } = lay(chart)
        const faults = CROSSES_GAPS.includes(stitch)
          ? replay.faults.filter((fault) => !fault.includes('runs'))
          : replay.faults
        expect(faults).toEqual([])
      }),
      { numRuns: 300 },
    )
  })

  it('has as much thread in holes as its passes say', () => {
    fc.assert(
      fc.property(randomCharts(stitch), (chart) => {
        const { replay, draft, geometry } = lay(chart)
        const passes = replay.passes.reduce((sum, count) => sum + count, 0)
        const counted = draft.events.poolCount + passEvents(draft.events)
        expect(passes).toBe(counted)
        const lengthMm = geometry.lengthMm[0] ?? 0
        expect(measuredThrough(chart)).toBeCloseTo(passes * lengthMm, 3)
      }),
      { numRuns: 100 },
    )
  })

  it('is mirrored when the chart and its sides are', () => {
    fc.assert(
      fc.property(randomCharts(stitch), fc.boolean(), (chart, isLeft) => {
        const mirrored = mirrorChart(chart)
        const here = lay(chart, { startSide: isLeft ? 'left' : 'right' })
        const there = lay(mirrored, { startSide: isLeft ? 'right' : 'left' })
        expect(routeText(there.events)).toEqual(
          routeText(mirrorEvents(chart, here.events, here.index, there.index)),
        )
        expect(there.threadMm).toBeCloseTo(here.threadMm, 2)
      }),
      { numRuns: 200 },
    )
  })
})

function passEvents({ kind, count }: ReturnType<typeof lay>['draft']['events']): number {
  let passes = 0
  for (let at = 0; at < count; at += 1) if (kind[at] === 1) passes += 1
  return passes
}

function measuredThrough(chart: Parameters<typeof lay>[0]): number {
  return lay(chart).throughMm
}

describe('a brick route of a plain shape', () => {
  it('never takes less thread for one more bead at the end of any row, start and order fixed', () => {
    fc.assert(
      fc.property(plainShapes('brick'), fc.boolean(), fc.nat(), (chart, isLeft, at) => {
        const settings = { startRow: 0, startSide: isLeft ? 'left' : 'right' } as const
        const before = lay(chart, settings)
        if (chart.rows.length < 2) return
        const row = 1 + (at % (chart.rows.length - 1))
        const grown = { ...chart, rows: chart.rows.with(row, longerRow(chart, row, before.events)) }
        const after = lay(grown, settings)
        fc.pre(orderOf(after.events) === orderOf(before.events))
        expect(after.threadMm).toBeGreaterThan(before.threadMm)
      }),
      { numRuns: 300 },
    )
  })

  it('needs no weaving and reaches every bead', () => {
    fc.assert(
      fc.property(plainShapes('brick'), (chart) => {
        const { warnings, events, replay } = lay(chart)
        expect(replay.faults).toEqual([])
        expect(warnings.filter(({ severity }) => severity === 'impossible')).toEqual([])
        const weaves = events.filter((event) => event.kind === 'pass' && event.purpose === 'weave')
        expect(weaves).toEqual([])
      }),
    )
  })
})

type Events = ReturnType<typeof lay>['events']

/** A row with one more bead at the end it is worked towards. */
function longerRow({ rows }: Chart, row: number, events: Events): Chart['rows'][number] {
  const { start = 0, cells = new Uint16Array(0) } = rows[row] ?? {}
  const begun = events.find((event) => event.kind === 'row' && event.row === row)
  const isFromLeft = begun?.kind === 'row' && begun.side === 'left'
  const longer = new Uint16Array(cells.length + 1).fill(1)
  return { start: isFromLeft ? start : start - 2, cells: longer }
}

/** Rows and sides in the order they are worked. */
function orderOf(events: Events): string {
  return events.map((event) => (event.kind === 'row' ? `${event.row} ${event.side}` : '')).join('')
}
