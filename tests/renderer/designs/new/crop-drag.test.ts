import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  CORNERS,
  clampCrop,
  cropBetween,
  dragCrop,
} from '../../../../renderer/rooms/designs/new/picture/crop-drag.ts'

const size = { width: 400, height: 300 }
const crop = { x: 100, y: 50, width: 200, height: 100 }

const anySize = fc.record({
  width: fc.integer({ min: 1, max: 500 }),
  height: fc.integer({ min: 1, max: 500 }),
})
const anyNumber = fc.double({ min: -2_000, max: 2_000, noNaN: true })

describe('dragCrop', () => {
  it('moves all of it, and stops at the border', () => {
    const moved = dragCrop(crop, { handle: 'move', dx: 30.4, dy: -20 }, size)
    expect(moved).toEqual({ ...crop, x: 130, y: 30 })
    expect(dragCrop(crop, { handle: 'move', dx: 900, dy: 900 }, size)).toEqual({
      ...crop,
      x: 200,
      y: 200,
    })
  })

  it('moves one corner while the other stays', () => {
    expect(dragCrop(crop, { handle: 'nw', dx: 10, dy: 20 }, size)).toEqual({
      x: 110,
      y: 70,
      width: 190,
      height: 80,
    })
    expect(dragCrop(crop, { handle: 'se', dx: -500, dy: 10 }, size)).toEqual({
      ...crop,
      width: 1,
      height: 110,
    })
  })

  it('stays inside and keeps at least a pixel, whatever is done', () => {
    fc.assert(
      fc.property(
        anySize,
        fc.tuple(anyNumber, anyNumber, anyNumber, anyNumber),
        fc.constantFrom('move' as const, ...CORNERS),
        anyNumber,
        anyNumber,
        (picture, [a, b, c, d], handle, dx, dy) => {
          const drawn = cropBetween({ x: a, y: b }, { x: c, y: d }, picture)
          const clamped = clampCrop({ x: a, y: b, width: c, height: d }, picture)
          for (const one of [drawn, clamped, dragCrop(drawn, { handle, dx, dy }, picture)]) {
            expect(Object.values(one).every(Number.isInteger)).toBe(true)
            expect(Math.min(one.x, one.y)).toBeGreaterThanOrEqual(0)
            expect(Math.min(one.width, one.height)).toBeGreaterThanOrEqual(1)
            expect(one.x + one.width).toBeLessThanOrEqual(picture.width)
            expect(one.y + one.height).toBeLessThanOrEqual(picture.height)
          }
        },
      ),
    )
  })
})
