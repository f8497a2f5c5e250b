import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drawChart } from '../stitches/draw-chart.ts'
import { randomCharts } from '../stitches/random-charts.ts'
import { designOf, panelOf, read } from './a-design.ts'
import { block } from './small-charts.ts'

describe('bench steps', () => {
  it('say in plain words what to pick up, which bridge, and whether to lock', () => {
    const chart = drawChart('brick', ['..A-B-', '.A-B-A-', 'A-B-B-A-'])
    const [part] = read(designOf([panelOf(chart, { route: { startRow: 2 } })])).parts
    const steps = part?.steps.map(({ text }) => text) ?? []
    expect(steps).toContain(
      'Row 2 from the right; pick up A, B; under bridge 2 from the edge; up through B; lock',
    )
    expect(steps).toContain('Pick up A; under bridge 3 from the edge; up through A')
  })

  it('cover every event once, in order', () => {
    fc.assert(
      fc.property(randomCharts('brick'), (chart) => {
        const [part] = read(designOf([panelOf(chart)])).parts
        let next = 0
        for (const { fromEvent, toEvent } of part?.steps ?? []) {
          expect(fromEvent).toBe(next)
          expect(toEvent).toBeGreaterThanOrEqual(fromEvent)
          next = toEvent + 1
        }
        expect(next).toBe(part?.events.length)
      }),
      { numRuns: 100 },
    )
  })

  it('name peyote rows as its word chart does', () => {
    const [part] = read(designOf([panelOf(block('peyote', 3, 4))])).parts
    const rows = part?.steps.map(({ text }) => /^Rows? [^;]* from/.exec(text)?.[0]).filter(Boolean)
    expect(rows).toEqual([
      'Rows 1 and 2 from',
      'Row 3 from',
      'Row 4 from',
      'Row 5 from',
      'Row 6 from',
    ])
    expect(part?.words[0]).toMatch(/^Rows 1 and 2, strung together/)
  })
})
