import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { findForm, referenceTables } from '../../../../shared-core/beads/bead-tables.ts'
import { indexBeads } from '../../../../shared-core/chart/bead-index.ts'
import type { Chart } from '../../../../shared-core/chart/chart.ts'
import { chartFromOutline } from '../../../../shared-core/chart/outlines/chart-from-outline.ts'
import {
  looseFindings,
  panelFindings,
} from '../../../../shared-core/design/assembly/panel-findings.ts'
import {
  findingCorners,
  findingOutline,
} from '../../../../shared-core/design/assembly/placed-finding.ts'
import type { Extra } from '../../../../shared-core/design/design.ts'
import { panelGeometry } from '../../../../shared-core/route/part-geometry.ts'
import { drawChart } from '../../stitches/draw-chart.ts'
import { designOf, panelOf } from '../a-design.ts'

const form = findForm(referenceTables, 'cylinder-11/0')
if (form === undefined) throw new Error('expected the reference form')

/** A band of cylinder beads in loom work, `columns` across and `rows` down. */
function band(columns: number, rows: number, ...findings: readonly Extra[]) {
  const drawn = chartFromOutline({ kind: 'band', stitch: 'loom', columns, rows })
  if (!drawn.ok) throw new Error('expected a band')
  return found(drawn.value.chart, findings)
}

function found(chart: Chart, findings: readonly Extra[]) {
  if (form === undefined) throw new Error('expected the reference form')
  const panel = panelOf(chart)
  const body = designOf([panel], { extras: findings })
  const geometry = panelGeometry(chart, indexBeads(chart), form, 0.2)
  return { body, panel, geometry, at: panelFindings(body, panel, geometry) }
}

const finding = (name: string, count = 1): Extra => ({ id: name, kind: 'finding', name, count })

describe('panelFindings', () => {
  it('lays a slide clasp along both short ends of a band that stands', () => {
    const { at, geometry } = band(5, 40, finding('Slide clasp'))
    expect(at.map(({ shape, way }) => [shape, way.x, way.y])).toEqual([
      ['bar', 0, -1],
      ['bar', 0, 1],
    ])
    const [top, foot] = at
    expect(top?.at.y).toBeCloseTo((geometry.yMm[0] ?? 0) - 0.8, 4)
    expect(foot?.at.y).toBeCloseTo((geometry.yMm.at(-1) ?? 0) + 0.8, 4)
    // Five beads of 1.3 mm with a warp between each two.
    expect(top?.acrossMm).toBeCloseTo((geometry.xMm[4] ?? 0) - (geometry.xMm[0] ?? 0) + 1.3, 4)
  })

  it('lays it along the sides of a band that lies', () => {
    expect(band(40, 5, finding('Cuff ends')).at.map(({ way }) => way.x)).toEqual([-1, 1])
  })

  it('lays it along all rows of a side that is out of step', () => {
    const chart = drawChart('brick', ['A-A-A-A-', '.A-A-A-A'])
    const { at, geometry } = found(chart, [finding('Slide clasp')])
    const high = (geometry.yMm[4] ?? 0) - (geometry.yMm[0] ?? 0)
    for (const { acrossMm } of at) {
      expect(acrossMm).toBeCloseTo(high + (geometry.lengthMm[0] ?? 0), 4)
    }
    expect(at).toHaveLength(2)
  })

  it('hangs an ear wire at the middle of the top, two rings at a quarter and three quarters', () => {
    const { at, geometry } = band(6, 6, finding('Ear wire'), finding('Jump ring', 2))
    const [left = 0, right = 0] = [geometry.xMm[0], geometry.xMm[5]]
    const middle = (left + right) / 2
    expect(at.map(({ shape }) => shape)).toEqual(['hook', 'ring', 'ring'])
    expect(at[0]?.at.x).toBeCloseTo(middle, 4)
    const wide = right - left + 1.3
    expect(at[1]?.at.x).toBeCloseTo(middle - wide / 4, 4)
    expect(at[2]?.at.x).toBeCloseTo(middle + wide / 4, 4)
  })

  it('shares what a unit has among the copies of its first panel, five beside each other at the most', () => {
    const { body, panel, geometry } = band(6, 6, finding('Jump ring', 6))
    const drawn = (copies: number) => panelFindings(body, { ...panel, copies }, geometry).length
    expect([1, 2, 3, 12].map(drawn)).toEqual([5, 3, 2, 1])
    expect(panelFindings(body, { ...panel, id: 'second' }, geometry)).toEqual([])
  })

  it('draws no stud, which is behind the work, and nothing whose name tells no place', () => {
    expect(band(6, 6, finding('Ear stud', 2), finding('Fitting')).at).toEqual([])
  })

  it('leaves what a strand carries to the strand', () => {
    const { body } = band(6, 6, finding('Ear wire'), finding('Jump ring'))
    const loop = { kind: 'strand', id: 'loop', name: 'Loop', shape: 'loop', beads: '6A' } as const
    const parts = [...body.parts, { ...loop, findingId: 'Ear wire', copies: 1 }]
    expect(looseFindings({ ...body, parts }).map(({ name }) => name)).toEqual(['Jump ring'])
  })
})

describe('findingCorners', () => {
  it('hold every point of the finding’s outline, whichever way it points', () => {
    const shapes = fc.constantFrom('ring', 'hook', 'bar')
    // Whole degrees: a double is nearly always next to nought.
    const turn = fc.integer({ min: 0, max: 359 }).map((degrees) => (degrees * Math.PI) / 180)
    fc.assert(
      fc.property(shapes, turn, fc.double({ min: 1, max: 60, noNaN: true }), (shape, by, wide) => {
        const acrossMm = shape === 'bar' ? wide : 0
        const upright = { at: { x: 0, y: 0 }, way: { x: 0, y: -1 }, shape, acrossMm } as const
        const corners = findingCorners(upright)
        const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)]
        for (const [, ...numbers] of findingOutline(upright).outline) {
          for (let i = 0; i + 1 < numbers.length; i += 2) {
            expect(numbers[i]).toBeGreaterThanOrEqual(Math.min(...xs) - 1e-6)
            expect(numbers[i]).toBeLessThanOrEqual(Math.max(...xs) + 1e-6)
            expect(numbers[i + 1]).toBeGreaterThanOrEqual(Math.min(...ys) - 1e-6)
            expect(numbers[i + 1]).toBeLessThanOrEqual(Math.max(...ys) + 1e-6)
          }
        }
        const [at, way] = [
          { x: 7, y: -3 },
          { x: Math.sin(by), y: -Math.cos(by) },
        ]
        // A corner so far beside the way and so far along it, wherever the way goes.
        findingCorners({ ...upright, at, way }).forEach(({ x, y }, i) => {
          const [beside, along] = [xs[i] ?? 0, -(ys[i] ?? 0)]
          expect(x).toBeCloseTo(at.x - beside * way.y + along * way.x, 6)
          expect(y).toBeCloseTo(at.y + beside * way.x + along * way.y, 6)
        })
      }),
    )
  })
})
