import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fitView, panBy, zoomAt } from '../../../renderer/drawing/view.ts'
import { viewAfterKey, wheel, zoom } from '../../../renderer/drawing/view-control.ts'

const size = fc.record({
  widthMm: fc.double({ min: 0.5, max: 2_000, noNaN: true }),
  heightMm: fc.double({ min: 0.5, max: 2_000, noNaN: true }),
})
const canvas = { width: 1_280, height: 800 }
const pictureOf = (work: Readonly<{ widthMm: number; heightMm: number }>) => ({
  work,
  beadMm: 1.3,
  canvas,
  ratio: 1,
})

describe('fitView', () => {
  it('shows the whole work with the same room on either side', () => {
    fc.assert(
      fc.property(size, (work) => {
        const view = fitView(work, canvas)
        const right = view.xMm + canvas.width / view.scale
        const bottom = view.yMm + canvas.height / view.scale
        expect(view.xMm).toBeLessThan(0)
        expect(view.yMm).toBeLessThan(0)
        expect(right - work.widthMm).toBeCloseTo(-view.xMm, 6)
        expect(bottom - work.heightMm).toBeCloseTo(-view.yMm, 6)
      }),
    )
  })

  it('gives a view of an empty work', () => {
    const view = fitView({ widthMm: 0, heightMm: 0 }, { width: 0, height: 0 })
    expect(Number.isFinite(view.xMm) && view.scale > 0).toBe(true)
  })
})

describe('zoomAt', () => {
  it('keeps the point under the pointer in its place', () => {
    fc.assert(
      fc.property(size, fc.double({ min: 0.2, max: 5, noNaN: true }), (work, factor) => {
        const before = fitView(work, canvas)
        const at = { x: 300, y: 500 }
        const after = zoomAt(before, factor, at, { least: 0, most: 1e9 })
        expect(after.xMm + at.x / after.scale).toBeCloseTo(before.xMm + at.x / before.scale, 6)
        expect(after.yMm + at.y / after.scale).toBeCloseTo(before.yMm + at.y / before.scale, 6)
      }),
    )
  })
})

describe('panBy', () => {
  it('never loses the work out of sight', () => {
    fc.assert(
      fc.property(size, fc.integer({ min: -1e6, max: 1e6 }), (work, far) => {
        const view = panBy(fitView(work, canvas), far, far, work, canvas)
        expect(view.xMm).toBeLessThan(work.widthMm)
        expect(view.xMm + canvas.width / view.scale).toBeGreaterThan(0)
      }),
    )
  })
})

describe('view control', () => {
  const work = { widthMm: 40, heightMm: 80 }
  const picture = pictureOf(work)
  const fitted = fitView(work, canvas)

  it('stops at one bead near and half the fit far', () => {
    let near = fitted
    let far = fitted
    for (let i = 0; i < 60; i += 1) {
      near = zoom(picture, near, 1.4)
      far = zoom(picture, far, 1 / 1.4)
    }
    expect(near.scale * picture.beadMm).toBeCloseTo(180, 6)
    expect(far.scale).toBeCloseTo(fitted.scale / 2, 6)
  })

  it('zooms with the wheel and moves sideways with Shift', () => {
    const turn = { deltaX: 0, deltaY: -100, ctrlKey: false, shiftKey: false }
    const at = { x: 640, y: 400 }
    expect(wheel(picture, fitted, turn, at).scale).toBeGreaterThan(fitted.scale)
    const near = zoom(picture, fitted, 4)
    const moved = wheel(picture, near, { ...turn, shiftKey: true }, at)
    expect(moved.scale).toBe(near.scale)
    expect(moved.xMm).toBeLessThan(near.xMm)
  })

  it('answers its own keys and leaves the others', () => {
    expect(viewAfterKey(picture, fitted, '0')).toBe('fit')
    expect(viewAfterKey(picture, fitted, 'q')).toBeUndefined()
    expect(viewAfterKey(picture, zoom(picture, fitted, 3), 'ArrowRight')).not.toEqual(fitted)
  })
})
