import { describe, expect, it } from 'vitest'
import { tidePath } from '../../../../renderer/rooms/today/tide-path.ts'

describe('tidePath', () => {
  const points = tidePath({ width: 100, height: 40, waves: 2 })
    .slice(1)
    .split('L')
    .map((point) => point.split(' ').map(Number))

  it('runs the whole width, from high water to high water', () => {
    expect(points[0]).toEqual([0, 2])
    expect(points.at(-1)).toEqual([100, 2])
  })

  it('is low halfway between two high waters', () => {
    expect(points[12]).toEqual([25, 38])
  })
})
