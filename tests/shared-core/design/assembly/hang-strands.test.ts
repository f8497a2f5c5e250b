import { describe, expect, it } from 'vitest'
import type { BeadForm } from '../../../../shared-core/beads/bead-form.ts'
import { findForm, referenceTables } from '../../../../shared-core/beads/bead-tables.ts'
import { indexBeads } from '../../../../shared-core/chart/bead-index.ts'
import { hangStrands, placeLoose } from '../../../../shared-core/design/assembly/hang-strands.ts'
import type { Strand } from '../../../../shared-core/design/design.ts'
import { panelGeometry } from '../../../../shared-core/route/part-geometry.ts'
import { drawChart } from '../../stitches/draw-chart.ts'
import { designOf, panelOf, strandOf } from '../a-design.ts'

const form = findForm(referenceTables, 'cylinder-11/0')
if (form === undefined) throw new Error('expected the reference form')
const lengthMm = form.lengthMm.value
const chart = drawChart('brick', ['A-A-A-A-', '.A-A-A-A', 'A-A-A-A-'])
const panel = panelOf(chart)
const wire = { id: 'wire', kind: 'finding', name: 'Ear wire', count: 1 } as const

/** What hangs from a panel of three rows of four beads. */
function hung(...strands: readonly Strand[]) {
  if (form === undefined) throw new Error('expected the reference form')
  const index = indexBeads(chart)
  const geometry = panelGeometry(chart, index, form, 0.2)
  const body = designOf([panel, ...strands], { extras: [wire] })
  const context = { body, threadMm: 0.2, formOfSlot: (_: number, one: BeadForm) => one }
  const placed = hangStrands(panel, { ...context, form, index, geometry })
  return { placed, geometry, loose: placeLoose(context, form) }
}

const anchor = (row: number, bead: number) => ({ anchor: { panelId: panel.id, row, bead } })

describe('hangStrands', () => {
  it('hangs a fringe straight down from the hole of its bead, its finding at its foot', () => {
    const { placed, geometry } = hung(strandOf('3A', { ...anchor(2, 1), findingId: wire.id }))
    const [strand] = placed
    const [x, top] = [geometry.xMm[9] ?? 0, (geometry.yMm[9] ?? 0) + lengthMm / 2]
    expect(placed).toHaveLength(1)
    for (const [bead, yMm] of (strand?.places.yMm ?? []).entries()) {
      expect(strand?.places.xMm[bead]).toBeCloseTo(x, 4)
      expect(yMm).toBeCloseTo(top + (bead + 0.5) * lengthMm, 4)
    }
    expect(strand?.finding).toMatchObject({ shape: 'hook', way: { x: 0, y: 1 } })
    expect(strand?.finding?.at.y).toBeCloseTo(top + 3 * lengthMm, 4)
  })

  it('hangs each copy from the next bead of the row, and those past its end from its last', () => {
    const { placed, geometry } = hung(strandOf('1A', { ...anchor(2, 2), copies: 3 }))
    const across = placed.map(({ places }) => places.xMm[0])
    expect(across).toEqual([geometry.xMm[10], geometry.xMm[11], geometry.xMm[11]])
  })

  it('bulges a loop up from the top row between two beads, its finding at its middle', () => {
    const loop = strandOf('8A', { ...anchor(0, 1), shape: 'loop', findingId: wire.id })
    const { placed, geometry } = hung(loop)
    const [strand] = placed
    const middle = ((geometry.xMm[1] ?? 0) + (geometry.xMm[2] ?? 0)) / 2
    const top = (geometry.yMm[1] ?? 0) - lengthMm / 2
    expect(strand?.finding?.way).toEqual({ x: 0, y: -1 })
    expect(strand?.finding?.at.x).toBeCloseTo(middle, 4)
    for (const yMm of strand?.places.yMm ?? []) {
      expect(yMm).toBeLessThan(top)
      expect(yMm).toBeGreaterThan(strand?.finding?.at.y ?? Infinity)
    }
  })

  it('leaves out a strand whose bead is gone, one without beads, and one of another panel', () => {
    const other = { anchor: { panelId: 'other', row: 0, bead: 0 } }
    const { placed, loose } = hung(
      strandOf('1A', anchor(2, 4)),
      strandOf('', anchor(2, 0)),
      strandOf('1A', other),
    )
    expect(placed).toEqual([])
    expect(loose).toHaveLength(1)
  })
})

describe('placeLoose', () => {
  it('lays a fringe down from nought and closes a loop to a ring, as many as a unit has', () => {
    const { loose } = hung(strandOf('2A', { copies: 3 }), strandOf('12A', { shape: 'loop' }))
    const [fringe, ring] = loose
    expect(loose.map(({ copies }) => copies)).toEqual([3, 1])
    expect([...(fringe?.placed.places.yMm ?? [])].map((mm) => mm / lengthMm)).toEqual([
      expect.closeTo(0.5, 4),
      expect.closeTo(1.5, 4),
    ])
    const places = ring?.placed.places
    expect(places?.xMm).toHaveLength(12)
    // Twelve beads on a circle: all as far from its middle, which lies straight below.
    const radius = (12 * lengthMm) / (2 * Math.PI)
    for (const [bead, x] of (places?.xMm ?? []).entries()) {
      expect(Math.hypot(x, (places?.yMm[bead] ?? 0) - radius)).toBeCloseTo(radius, 3)
    }
  })
})
