import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Mark } from '../../../electron/service/documents/draw-list.ts'
import { blockMarks } from '../../../electron/service/documents/pattern-sheet/chart-marks.ts'
import {
  BEAD_SIDE,
  planChart,
} from '../../../electron/service/documents/pattern-sheet/chart-plan.ts'
import type { PrintedChart } from '../../../electron/service/documents/pattern-sheet/printed-chart.ts'
import { sampleDesigns } from '../../../electron/service/sample/designs.ts'
import { type Chart, type StitchKind, slotLabel } from '../../../shared-core/chart/chart.ts'
import { fromChartJson } from '../../../shared-core/chart/chart-json.ts'
import { countSlots } from '../../../shared-core/chart/count-slots.ts'
import { extent } from './mark-extent.ts'
import { looks, printed } from './printed.ts'
import { rowNumbersOf } from './row-numbers.ts'

const STITCHES: readonly StitchKind[] = [
  'brick',
  'peyote',
  'square',
  'loom',
  'ladder',
  'herringbone',
]

/** Charts with gaps and ragged ends, up to a few pages of them. */
const charts = fc
  .record({
    stitch: fc.constantFrom(...STITCHES),
    rows: fc.array(
      fc.record({
        shift: fc.integer({ min: 0, max: 4 }),
        cells: fc.array(fc.integer({ min: 0, max: 30 }), { maxLength: 70 }),
      }),
      { minLength: 1, maxLength: 90 },
    ),
  })
  .map(
    ({ stitch, rows }): Chart => ({
      stitch,
      rows: rows.map(({ shift, cells }, row) => ({
        start: 2 * shift + (stitch === 'brick' ? row % 2 : 0),
        cells: Uint16Array.from(cells),
      })),
    }),
  )

/** Beads are the stamps with both a fill and an edge. */
function beadStamps(marks: readonly Mark[]): readonly Extract<Mark, { kind: 'stamps' }>[] {
  return marks.flatMap((mark) =>
    mark.kind === 'stamps' && mark.fill !== null && mark.stroke !== null ? [mark] : [],
  )
}

describe('planChart', () => {
  const room = { left: 18, top: 36, right: 192, bottom: 260 }
  const gutterMm = 9

  it('puts every bead on one page, in one place, with its own slot, at a readable size', () => {
    fc.assert(
      fc.property(charts, (chart) => {
        const ready = printed(chart)
        fc.pre(ready !== undefined)
        const plan = planChart({ extent: ready.extent, pitch: ready.pitch, room, gutterMm })
        expect(plan.scale * 1.3).toBeGreaterThanOrEqual(BEAD_SIDE.least - 1e-9)
        const perSlot = new Map<string, number>()
        plan.pages.forEach((blocks) => {
          const places = new Set<string>()
          for (const block of blocks) {
            for (const { placesMm } of beadStamps(blockMarks(ready, block, plan.scale, gutterMm))) {
              for (const [x, y] of placesMm) places.add(`${x.toFixed(2)} ${y.toFixed(2)}`)
              perSlot.set('all', (perSlot.get('all') ?? 0) + placesMm.length)
            }
          }
          perSlot.set('places', (perSlot.get('places') ?? 0) + places.size)
        })
        const all = countSlots(chart).reduce((sum, count) => sum + count, 0)
        expect(perSlot.get('all')).toBe(all)
        expect(perSlot.get('places')).toBe(all)
      }),
      { numRuns: 60 },
    )
  })

  it('numbers every row once in each band of columns and stays in its room', () => {
    fc.assert(
      fc.property(charts, (chart) => {
        const ready = printed(chart)
        fc.pre(ready !== undefined)
        const { extent: beads } = ready
        const plan = planChart({ extent: beads, pitch: ready.pitch, room, gutterMm })
        const blocks = plan.pages.flat()
        const marksOf = (block: (typeof blocks)[number]) =>
          blockMarks(ready, block, plan.scale, gutterMm)
        const per = chart.stitch === 'peyote' ? 2 : 1
        const rows = Array.from(
          { length: (beads.lastRow - beads.firstRow + 1) * per },
          (_, i) => beads.firstRow * per + i + 1,
        )
        for (const band of Map.groupBy(blocks, ({ at }) => at[0]).values()) {
          const numbers = band.flatMap((block) => rowNumbersOf(marksOf(block)))
          expect(numbers.toSorted((a, b) => a - b)).toEqual(rows)
        }
        for (const mark of blocks.flatMap(marksOf)) {
          const [left, top, right, bottom] = extent(mark)
          expect(left).toBeGreaterThanOrEqual(room.left - 1)
          expect(right).toBeLessThanOrEqual(room.right + 1)
          expect(top).toBeGreaterThanOrEqual(room.top)
          expect(bottom).toBeLessThanOrEqual(room.bottom + 2)
        }
      }),
      { numRuns: 60 },
    )
  })

  it('prints as many beads of each slot as the chart counts', () => {
    for (const { name, body } of sampleDesigns) {
      const panel = body.parts.find((part) => part.kind === 'panel')
      if (panel === undefined) throw new Error(`${name} has no panel`)
      const chart = fromChartJson(panel.chart)
      const lookOf = (index: number) => ({
        ...looks(index),
        colourHex: `#${String(index + 10)}0000`,
      })
      const ready = { ...(printed(chart) as PrintedChart), lookOf }
      const plan = planChart({ extent: ready.extent, pitch: ready.pitch, room, gutterMm })
      const found = new Map<string | null, number>()
      for (const block of plan.pages.flat()) {
        for (const { fill, placesMm } of beadStamps(blockMarks(ready, block, plan.scale, 9))) {
          found.set(fill, (found.get(fill) ?? 0) + placesMm.length)
        }
      }
      countSlots(chart).forEach((count, slot) => {
        expect([slotLabel(slot), found.get(`#${String(slot + 10)}0000`) ?? 0]).toEqual([
          slotLabel(slot),
          count,
        ])
      })
    }
  })
})
