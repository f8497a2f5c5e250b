import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Chart } from '../../../../shared-core/chart/chart.ts'
import type { ChartEdit } from '../../../../shared-core/chart/edits/chart-edit.ts'
import { quarterTurn, type Turn } from '../../../../shared-core/chart/edits/quarter-turn.ts'
import { misplacedRows } from '../../../../shared-core/chart/row-phase.ts'
import { anyChartOf } from '../any-chart.ts'
import { drawn, picture } from '../picture.ts'
import { placedBeads } from '../placed.ts'

const turned = (chart: Chart, turn: Turn): ChartEdit => {
  const outcome = quarterTurn(chart, turn)
  if (!outcome.ok) throw new Error(outcome.error.message)
  return outcome.value
}

const turnable = fc
  .constantFrom(
    'brick' as const,
    'peyote' as const,
    'square' as const,
    'right-angle-weave' as const,
  )
  .chain((stitch) => anyChartOf(stitch))

describe('quarterTurn', () => {
  it('reads a peyote band turned clockwise as brick', () => {
    const { chart } = turned(drawn('peyote', ['A B C', 'D E']), 'clockwise')
    expect(chart.stitch).toBe('brick')
    expect(picture(chart)).toEqual([' D A', 'E B', '   C'])
  })

  it('reads a brick panel turned anticlockwise as peyote', () => {
    const { chart } = turned(drawn('brick', [' A B', 'C D E']), 'anticlockwise')
    expect(chart.stitch).toBe('peyote')
    expect(picture(chart)).toEqual(['  E', 'B D', 'A C'])
  })

  it('places every bead a quarter further', () => {
    fc.assert(
      fc.property(turnable, fc.boolean(), (chart, isClockwise) => {
        const image = placedBeads(chart, ({ x, y }) =>
          isClockwise ? { x: -y, y: x } : { x: y, y: -x },
        )
        const { chart: now } = turned(chart, isClockwise ? 'clockwise' : 'anticlockwise')
        expect(placedBeads(now)).toEqual(image)
        expect(misplacedRows(now)).toEqual([])
      }),
      { numRuns: 600 },
    )
  })

  it('comes back after a turn the other way', () => {
    fc.assert(
      fc.property(turnable, (chart) => {
        const back = turned(turned(chart, 'clockwise').chart, 'anticlockwise').chart
        expect(back.stitch).toBe(chart.stitch)
        expect(placedBeads(back)).toEqual(placedBeads(chart))
      }),
    )
  })

  it.each(['ladder', 'herringbone'] as const)('refuses %s in a plain sentence', (stitch) => {
    expect(quarterTurn(drawn(stitch, ['A A']), 'clockwise')).toMatchObject({
      ok: false,
      error: { code: 'turn-not-possible' },
    })
  })

  it('refuses a turn that blanks would make larger than a chart can be', () => {
    const row = { start: 0, cells: new Uint16Array(100_000).fill(1) }
    const blank = { start: 0, cells: new Uint16Array(0) }
    const rows = Array.from({ length: 100 }, (_, i) => (i % 99 === 0 ? row : blank))
    expect(quarterTurn({ stitch: 'square', rows }, 'clockwise')).toMatchObject({
      ok: false,
      error: { code: 'turn-too-large' },
    })
  })

  it('turns a row of 100,000 beads into a column', () => {
    const row = { start: 0, cells: new Uint16Array(100_000).fill(1) }
    const { chart } = turned({ stitch: 'brick', rows: [row] }, 'clockwise')
    expect([chart.stitch, chart.rows.length]).toEqual(['peyote', 100_000])
  })
})
