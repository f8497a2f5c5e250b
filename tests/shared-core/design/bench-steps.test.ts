import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drawChart } from '../stitches/draw-chart.ts'
import { randomCharts } from '../stitches/random-charts.ts'
import { designOf, panelOf, read, strandOf } from './a-design.ts'
import { block, diamond } from './small-charts.ts'

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

describe('the steps of a strand that hangs', () => {
  const textsOf = (body: ReturnType<typeof designOf>) => {
    const part = read(body).parts.at(-1)
    return { words: part?.words, steps: part?.steps.map(({ text }) => text) }
  }

  it('name every bead of the panel they go through by its row and its number from the left', () => {
    // The last row is worked from the right, so the thread hangs below its first bead; up through the
    // second, then from bead to bead above, and down out of the third bead of row 3.
    const anchor = { panelId: 'panel', row: 2, bead: 2 }
    const { words, steps } = textsOf(
      designOf([panelOf(diamond), strandOf('4A', { shape: 'loop', anchor })]),
    )
    expect(words).toEqual(['Strand, from row 3, bead 3 of the panel: 4A'])
    expect(steps?.[0]).toBe(
      'Weave up through row 5, bead 2, then up through row 4, bead 2, then up through row 3, bead 2, then down through row 3, bead 3 of the panel',
    )
    expect(steps?.[1]).toMatch(
      /^Pick up 4A; up through row 3, bead 4 of the panel; once more down through row 3, bead 3 of the panel;/,
    )
  })

  it('name the last bead of a way too long to be told bead by bead', () => {
    const anchor = { panelId: 'panel', row: 0, bead: 0 }
    const { steps } = textsOf(
      designOf([panelOf(diamond), strandOf('4A', { shape: 'loop', anchor })]),
    )
    expect(steps?.[0]).toBe('Weave up through 5 beads of the panel, the last of them row 1, bead 1')
  })

  it('name the panel where there are several, and count half rows in peyote', () => {
    // The fourth column of the third row lies in half row 6, where it is the second of three beads.
    const anchor = { panelId: 'back', row: 2, bead: 3 }
    const back = panelOf(block('peyote', 3, 6), { id: 'back', name: 'Back' })
    const { words, steps } = textsOf(
      designOf([panelOf(diamond), back, strandOf('3A 1B', { anchor })]),
    )
    expect(words).toEqual(['Strand, from row 6, bead 2 of Back: 3A 1B'])
    expect(steps?.[0]).toMatch(/right through row 6, bead 2 of Back$/)
    expect(steps?.[1]).toMatch(/; left through row 6, bead 2 of Back$/)
  })

  it('say of fringe side by side from which bead to which it hangs', () => {
    const anchor = { panelId: 'panel', row: 4, bead: 0 }
    const { words, steps } = textsOf(
      designOf([panelOf(diamond), strandOf('3A 1B', { anchor, copies: 2 })]),
    )
    expect(words).toEqual(['Strand, from row 5, bead 1 to row 5, bead 2 of the panel: 3A 1B'])
    expect(steps?.[0]).toBe('Weave down through row 5, bead 2 of the panel')
  })
})
