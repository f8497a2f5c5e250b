import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { beadBoxes } from '../../../renderer/drawing/bead-boxes.ts'
import { chartScene } from '../../../renderer/drawing/chart-scene.ts'
import type { StitchKind } from '../../../shared-core/chart/chart.ts'
import { exactly } from '../../../shared-core/units/spread.ts'

const COLUMNS = 24
const ROWS = 20

const form = (diameterMm: number, lengthMm: number) => ({
  ...{ id: 'cylinder', name: 'Cylinder', family: 'cylinder', sizeLabel: '11/0' },
  ...{ diameterMm: exactly(diameterMm), lengthMm: exactly(lengthMm), holeMm: exactly(0.8) },
  ...{ beadsPerGram: exactly(200), cullRate: exactly(0) },
})

type Size = Readonly<{ diameterMm: number; lengthMm: number; threadMm: number }>

const panel = (stitch: StitchKind, { diameterMm, lengthMm, threadMm }: Size) =>
  chartScene({
    chart: {
      stitch,
      rows: Array.from({ length: ROWS }, () => ({
        start: 0,
        cells: new Uint16Array(COLUMNS).fill(1),
      })),
    },
    form: form(diameterMm, lengthMm) as Parameters<typeof chartScene>[0]['form'],
    palette: [{ hex: '#465a66', finish: 'matte' }],
    threadMm,
  })

const anyPanel = fc.record({
  stitch: fc.constantFrom<StitchKind>('square', 'loom', 'brick'),
  diameterMm: fc.double({ min: 1, max: 4, noNaN: true }),
  lengthMm: fc.double({ min: 1, max: 4, noNaN: true }),
  threadMm: fc.constantFrom(0, 0.06, 0.12),
  scale: fc.double({ min: 3, max: 12, noNaN: true }),
})

describe('beadBoxes', () => {
  it('leaves no line between beads that touch or whose thread is too thin to be seen, at any scale', () => {
    fc.assert(
      fc.property(anyPanel, ({ stitch, scale, ...size }) => {
        fc.pre(size.threadMm * scale < 1.5)
        const boxOf = beadBoxes(panel(stitch, size), scale)
        let lines = 0
        for (let bead = 0; bead < ROWS * COLUMNS; bead += 1) {
          const here = boxOf(bead)
          if ((bead + 1) % COLUMNS > 0) {
            lines += Math.min(0, here.right - boxOf(bead + 1).left)
          }
          if (bead + COLUMNS < ROWS * COLUMNS) {
            lines += Math.min(0, here.bottom - boxOf(bead + COLUMNS).top)
          }
        }
        expect(lines).toBe(0)
      }),
      { numRuns: 60 },
    )
  })

  it('keeps a gap that is wide enough to be drawn', () => {
    const size = { diameterMm: 1.6, lengthMm: 1.3, threadMm: 0.12 }
    const boxOf = beadBoxes(panel('brick', size), 40)
    expect(boxOf(COLUMNS).top - boxOf(0).bottom).toBe(5)
  })
})
