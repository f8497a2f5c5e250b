import { describe, expect, it } from 'vitest'
import type { BeadScene } from '../../../renderer/drawing/bead-scene.ts'
import { timesLarger } from '../../../renderer/drawing/draw-thumbnail.ts'

function scene(beads: number): BeadScene {
  return {
    xMm: new Float32Array(beads),
    yMm: new Float32Array(beads),
    slotOf: new Uint16Array(beads),
    palette: [],
    widthMm: 100,
    heightMm: 100,
    beadWidthMm: 1.6,
    beadHeightMm: 1.3,
    axis: 'vertical',
  }
}

const at = (scale: number) => ({ xMm: 0, yMm: 0, scale })

describe('timesLarger', () => {
  it('draws small beads larger, so that they show their shine, and at most four times', () => {
    expect(timesLarger(scene(100), at(8))).toBe(1)
    expect(timesLarger(scene(100), at(3))).toBe(3)
    expect(timesLarger(scene(100), at(0.5))).toBe(4)
  })

  it('draws very many beads large enough for their colours only', () => {
    expect(timesLarger(scene(20_000), at(1.5))).toBe(2)
    expect(timesLarger(scene(20_000), at(3))).toBe(1)
  })
})
