import { describe, expect, it } from 'vitest'
import type { Chart } from '../../../shared-core/chart/chart.ts'
import { countBeads } from '../../../shared-core/chart/count-slots.ts'
import { drawChart } from '../stitches/draw-chart.ts'
import { designOf, panelOf, read, strandOf } from './a-design.ts'
import { offLoomStitches } from './off-loom-stitches.ts'
import { block, diamond } from './small-charts.ts'

/** Far above what a reading takes on an idle machine, far below for ever. */
const BOUND_MS = 60_000

describe('an impossible chart', () => {
  const warningsOf = (chart: Chart) => {
    const reading = read(designOf([panelOf(chart)]))
    void reading.parts[0]?.steps
    void reading.parts[0]?.words
    return reading.warnings.map(({ code }) => code)
  }

  it('without rows, or with rows without beads, reads as nothing and says so', () => {
    for (const stitch of offLoomStitches) {
      expect(warningsOf({ stitch, rows: [] })).toEqual(['no-beads'])
      expect(warningsOf(drawChart(stitch, ['....', '....']))).toEqual(['no-beads'])
    }
    const bare = read(designOf([strandOf('', { name: 'Fringe' })]))
    expect(bare.warnings[0]?.message).toBe('Fringe has no beads.')
    expect(bare.thread.inPieceMm.value).toBe(0)
    expect(read(designOf([])).beads).toBe(0)
  })

  it('names beads that float, at any distance', () => {
    expect(warningsOf(drawChart('brick', ['A-A-A-', '', 'A-A-A-A-']))).toEqual(['floating-beads'])
    const apart = drawChart('brick', ['A-A-A-', `${'.'.repeat(2001)}A-A-A-`])
    expect(warningsOf(apart)).toEqual(['floating-beads'])
  })

  it('with slots the palette does not have is read, and says so', () => {
    expect(warningsOf(drawChart('brick', ['..Z-A-', '.A-A-A-']))).toEqual(['slot-without-bead'])
  })

  it('with rows that lie on the wrong half bead is named, not stitched', () => {
    const chart: Chart = {
      stitch: 'brick',
      rows: [
        { start: 0, cells: new Uint16Array(3).fill(1) },
        { start: 0, cells: new Uint16Array(4).fill(1) },
      ],
    }
    expect(warningsOf(chart)).toEqual(['floating-beads'])
  })

  it('of one column is read without end or exception in every stitch', () => {
    for (const stitch of offLoomStitches) {
      const column = { stitch, rows: block(stitch, 300, 1).rows }
      expect(countBeads(column)).toBe(300)
      expect(() => warningsOf(column)).not.toThrow()
    }
  })

  it(
    'of 100,000 columns, or 100,000 rows, or a comb of 2,000 teeth is read in bounded time',
    () => {
      const comb = drawChart('brick', [`.${'A-A-..'.repeat(2000)}`, `${'A-A-A-'.repeat(2000)}`])
      for (const chart of [block('brick', 2, 100_000), block('brick', 100_000, 2), comb]) {
        const began = performance.now()
        const reading = read(designOf([panelOf(chart)]))
        expect(reading.beads).toBe(countBeads(chart))
        expect(performance.now() - began).toBeLessThan(BOUND_MS)
      }
    },
    3 * BOUND_MS,
  )

  it('of loose beads on a checkerboard is read in bounded time', () => {
    const rows = Array.from({ length: 300 }, (_, row) => ({
      start: row % 2,
      cells: Uint16Array.from({ length: 300 }, (_, at) => (at + row) % 2),
    }))
    const began = performance.now()
    expect(warningsOf({ stitch: 'brick', rows })).toContain('floating-beads')
    expect(performance.now() - began).toBeLessThan(BOUND_MS)
  })

  it('asks for a start row it cannot have, and says which is used', () => {
    const reading = read(designOf([panelOf(diamond, { route: { startRow: 77 } })]))
    expect(reading.warnings.map(({ code }) => code)).toEqual(['start-row-unusable'])
  })
})
