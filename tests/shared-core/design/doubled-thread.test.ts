import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { blockChart } from '../../../shared-core/chart/block-chart.ts'
import { designBody } from '../../../shared-core/contract/design-calls.ts'
import { drawChart } from '../stitches/draw-chart.ts'
import { randomCharts } from '../stitches/random-charts.ts'
import { designOf, panelOf, read, strandOf } from './a-design.ts'

const diamond = drawChart('brick', ['..A-A-', '.A-B-A-', 'A-B-B-A-', '.A-B-A-', '..A-A-'])
const doubled = { threadStrands: 2 } as const

/** Of two strands drawn together one lies a little longer. */
const LONGER = 1.01

describe('a doubled thread', () => {
  it('takes twice the thread and a hundredth more, and weighs so', () => {
    const [single, double] = [
      read(designOf([panelOf(diamond)])),
      read(designOf([panelOf(diamond)], doubled)),
    ]
    const ratio = double.thread.inPieceMm.value / single.thread.inPieceMm.value
    // Either length is a whole number of mm.
    expect(Math.abs(ratio - 2 * LONGER)).toBeLessThan(3 / single.thread.inPieceMm.value)
    expect(double.unitMassMg.value).toBeGreaterThan(single.unitMassMg.value)
    expect(double.beads).toBe(single.beads)
  })

  it('is cut twice as long: the same lengths in the hand, folded once', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 30 }), (rows) => {
        const parts = [panelOf(blockChart('brick', { rows, columns: 12 }))]
        const [single, double] = [read(designOf(parts)), read(designOf(parts, doubled))]
        for (const length of double.thread.cutMm) {
          // What is wished for in the hand is 1.6 m; a stretch that cannot be cut may pass it a little.
          expect(length / 2).toBeLessThan(1_600 * 1.1)
        }
        const spool = double.thread.spoolMm.value / single.thread.spoolMm.value
        expect(spool).toBeGreaterThan(1.95)
        expect(spool).toBeLessThan(2.2)
      }),
      { numRuns: 20 },
    )
  })

  it('adds up: what stays in the piece and what is snipped off are the lengths cut', () => {
    fc.assert(
      fc.property(randomCharts('brick'), (chart) => {
        const { thread, parts } = read(designOf([panelOf(chart)], doubled))
        const snipped = (parts[0]?.events ?? []).reduce(
          (sum, event) => (event.kind === 'cut' ? sum + event.tailMm : sum),
          0,
        )
        const cut = thread.cutMm.reduce((sum, mm) => sum + mm, 0)
        const lengths = Math.max(1, thread.cutMm.length)
        // Lengths are rounded up to whole centimetres.
        expect(cut - thread.inPieceMm.value - snipped).toBeGreaterThan(-2 * lengths)
        expect(cut - thread.inPieceMm.value - snipped).toBeLessThan(12 * lengths)
      }),
      { numRuns: 50 },
    )
  })

  it('lays two strands in every pass, so that holes hold fewer passes', () => {
    const [single, double] = [
      read(designOf([panelOf(diamond)])).parts[0],
      read(designOf([panelOf(diamond)], doubled)).parts[0],
    ]
    expect(double?.passes).toEqual(single?.passes)
    double?.holds.forEach((passes, bead) => {
      expect(2 * passes).toBeLessThanOrEqual((single?.holds[bead] ?? 0) + 1)
    })
    expect(double?.fill.some((fill, bead) => fill > (single?.fill[bead] ?? 0))).toBe(true)
  })

  it('is told where the needle is threaded, and nowhere else', () => {
    const steps = read(designOf([panelOf(diamond)], doubled)).parts[0]?.steps ?? []
    const told = steps.filter(({ text }) => text.includes('doubled'))
    expect(told.map(({ text }) => text)).toEqual([
      expect.stringMatching(/^Thread the needle with \d+ mm, doubled$/),
    ])
  })

  it('runs through strands as well', () => {
    const parts = [strandOf('12A 1B')]
    const [single, double] = [read(designOf(parts)), read(designOf(parts, doubled))]
    const ratio = double.thread.inPieceMm.value / single.thread.inPieceMm.value
    expect(ratio).toBeCloseTo(2 * LONGER, 1)
  })

  it('leaves the warps of a loom single', () => {
    const chart = blockChart('loom', { rows: 10, columns: 4 })
    const warps = (body: ReturnType<typeof designOf>) =>
      (read(body).parts[0]?.events ?? []).filter(({ kind }) => kind === 'warp')
    expect(warps(designOf([panelOf(chart)], doubled))).toEqual(warps(designOf([panelOf(chart)])))
  })
})

describe('a body that says nothing of strands', () => {
  it('is read as it always was: a single thread', () => {
    const body = designOf([panelOf(diamond)])
    expect(designBody.safeParse(body).success).toBe(true)
    expect(read(body)).toEqual(read({ ...body, threadStrands: 1 }))
  })

  it.each([0, 3, 1.5, '2', null])('of %j strands cannot be', (threadStrands) => {
    const body = { ...designOf([panelOf(diamond)]), threadStrands }
    expect(designBody.safeParse(body).success).toBe(false)
  })
})
