import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { blockChart } from '../../../shared-core/chart/block-chart.ts'
import { countPasses } from '../../../shared-core/route/count-passes.ts'
import { FINISH_BEADS } from '../../../shared-core/route/thread-ends.ts'
import { warpEndPasses } from '../../../shared-core/stitches/loom/warp-end-passes.ts'
import { designOf, panelOf, read } from '../design/a-design.ts'
import { lay } from './lay.ts'

function woven(rows: number, columns: number, holds: number) {
  const { index, draft } = lay(blockChart('loom', { rows, columns }))
  const passes = countPasses(draft.events, index.count)
  const ends = warpEndPasses({
    index,
    hops: draft.hops,
    passes,
    holds: new Uint16Array(index.count).fill(holds),
  })
  return { index, passes, ends }
}

describe('the warp ends of loom work', () => {
  it('run through six beads each, two ends a warp, one warp more than columns', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 12 }),
        fc.integer({ min: 4, max: 12 }),
        (rows, columns) => {
          const { ends } = woven(rows, columns, 99)
          const all = ends.reduce((sum, added) => sum + added, 0)
          expect(all).toBe(2 * (columns + 1) * FINISH_BEADS)
        },
      ),
      { numRuns: 40 },
    )
  })

  it('go where there is room: no bead of a band takes more than its hole holds', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 12, max: 60 }),
        fc.integer({ min: 6, max: 20 }),
        (rows, columns) => {
          const { ends, passes } = woven(rows, columns, 8)
          expect(new Set(passes)).toEqual(new Set([2]))
          expect(2 + Math.max(...ends)).toBeLessThanOrEqual(8)
        },
      ),
      { numRuns: 40 },
    )
  })

  it('begin beside their own warps, at the top and at the bottom', () => {
    const { ends, index } = woven(40, 3, 99)
    const touched = new Set(
      Array.from(ends, (added, bead) => (added > 0 ? (index.rowOf[bead] ?? 0) : -1)),
    )
    expect(touched.has(0) || touched.has(1)).toBe(true)
    expect(touched.has(39) || touched.has(38)).toBe(true)
    expect(touched.has(20)).toBe(false)
  })

  it('are nothing where there is no bead', () => {
    const { ends } = woven(0, 0, 99)
    expect(ends).toEqual(new Uint16Array(0))
  })

  it('count in the passes and the fill of a reading', () => {
    const { passes } = read(designOf([panelOf(blockChart('loom', { rows: 6, columns: 6 }))]))
      .parts[0] ?? { passes: new Uint16Array(0) }
    const all = passes.reduce((sum, made) => sum + made, 0)
    // Weft to and fro, both its ends, and both ends of seven warps.
    expect(all).toBe(2 * 36 + 2 * FINISH_BEADS + 2 * 7 * FINISH_BEADS)
  })
})
