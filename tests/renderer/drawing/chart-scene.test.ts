import { describe, expect, it } from 'vitest'
import { chartScene } from '../../../renderer/drawing/chart-scene.ts'
import type { StitchKind } from '../../../shared-core/chart/chart.ts'
import { exactly } from '../../../shared-core/units/spread.ts'

const form = {
  id: 'cylinder-11',
  name: 'Cylinder',
  family: 'cylinder',
  sizeLabel: '11/0',
  diameterMm: exactly(1.6),
  lengthMm: exactly(1.3),
  holeMm: exactly(0.8),
  beadsPerGram: exactly(200),
  cullRate: exactly(0),
} as const

function sceneOf(stitch: StitchKind) {
  const rows = [0, stitch === 'brick' ? 1 : 0, 0].map((start) => ({
    start,
    cells: Uint16Array.of(1, 1, 1),
  }))
  return chartScene({
    chart: { stitch, rows },
    form,
    palette: [{ hex: '#445566', finish: 'matte' }],
  })
}

describe('chartScene', () => {
  it('stands brick beads upright and joins each to its right neighbour by a bridge', () => {
    const scene = sceneOf('brick')
    expect([scene.axis, scene.beadWidthMm, scene.beadHeightMm]).toEqual(['vertical', 1.6, 1.3])
    expect([...(scene.nextOf ?? [])]).toEqual([1, 2, -1, 4, 5, -1, 7, 8, -1])
  })

  it('lays peyote beads across and joins each to the one below', () => {
    const scene = sceneOf('peyote')
    expect([scene.axis, scene.beadWidthMm, scene.beadHeightMm]).toEqual(['horizontal', 1.3, 1.6])
    expect([...(scene.nextOf ?? [])]).toEqual([3, 4, 5, 6, 7, 8, -1, -1, -1])
  })

  it('strings a loom with one warp more than it has columns', () => {
    expect(sceneOf('loom').lines?.length).toBe(4 * 4)
  })

  it('leans herringbone beads towards each other in pairs', () => {
    const [left = 0, right = 0] = sceneOf('herringbone').leanOf ?? []
    expect(left).toBeCloseTo(-right, 6)
    expect(left).not.toBe(0)
  })

  it('gives every slot the family of the form', () => {
    expect(sceneOf('brick').palette).toEqual([
      { hex: '#445566', finish: 'matte', family: 'cylinder' },
    ])
  })
})
