import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { readerMap } from '../../../shared-core/bench/reader-place.ts'
import { estimateUpTo, paceAtStart, timeLeft } from '../../../shared-core/bench/time-left.ts'
import { writeScript } from '../../../shared-core/bench/write-script.ts'
import { referencePace } from '../../../shared-core/design/labour-pace.ts'
import { measured } from '../../../shared-core/units/spread.ts'
import { designOf, panelOf, read, strandOf } from '../design/a-design.ts'
import { drawChart } from '../stitches/draw-chart.ts'
import { mapOf } from './written.ts'

const chart = drawChart('square', ['AAAAAAAAAA', 'ABABABABAB', 'AAAAAAAAAA', 'ABABABABAB'])
const body = designOf([panelOf(chart, { copies: 2 })])
const map = mapOf(body, 4)
const none = { workedS: 0, madeS: 0 }

describe('the time left', () => {
  it('is what the reading says of stitching, before anything is known', () => {
    const { stitchingS } = read(body).labour
    expect(timeLeft(map, 0, none)).toEqual({ leftS: stitchingS.value * 4, basis: 'estimated' })
  })

  it('is as well known as the pace it is reckoned at, until its own outweighs that', () => {
    const square = measured(8, 10, 12)
    const pace = { ...referencePace, perBeadS: { ...referencePace.perBeadS, square } }
    const known = writeScript(body, { ...referenceTables, pace })
    if (!known.ok) throw new Error(known.error.message)
    expect(timeLeft(readerMap(known.value, 4), 0, none).basis).toBe('measured')
    const fringed = designOf([panelOf(chart), strandOf('9A')])
    const partly = writeScript(fringed, { ...referenceTables, pace })
    expect(partly.ok && partly.value.paceBasis).toBe('estimated')
  })

  it('is nothing at the end', () => {
    expect(timeLeft(map, map.steps, { workedS: 5_000, madeS: 4_000 }).leftS).toBe(0)
  })

  it('follows the pace seen, more the more has been seen', () => {
    const slow = timeLeft(map, 0, { workedS: 1_200, madeS: 600 })
    const slower = timeLeft(map, 0, { workedS: 12_000, madeS: 6_000 })
    const usual = timeLeft(map, 0, none).leftS
    expect(slow).toEqual({ leftS: Math.round(usual * 1.5), basis: 'measured' })
    expect(slower.leftS).toBeGreaterThan(slow.leftS)
    expect(slower.leftS).toBeLessThan(2 * usual)
  })

  it('grows less with every step', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: map.steps - 1 }), (at) => {
        expect(estimateUpTo(map, at + 1)).toBeGreaterThanOrEqual(estimateUpTo(map, at))
        expect(timeLeft(map, at + 1, none).leftS).toBeLessThanOrEqual(timeLeft(map, at, none).leftS)
      }),
    )
  })

  it('does not learn from a place that was jumped to', () => {
    expect(paceAtStart(map, map.steps - 1, 3)).toEqual(none)
    const madeS = estimateUpTo(map, map.stepsInUnit)
    expect(paceAtStart(map, map.stepsInUnit, 2 * madeS)).toEqual({ workedS: 2 * madeS, madeS })
  })
})
