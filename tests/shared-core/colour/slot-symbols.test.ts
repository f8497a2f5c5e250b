import { describe, expect, it } from 'vitest'
import type { PathStep } from '../../../shared-core/colour/path-step.ts'
import { slotSymbol, slotSymbols } from '../../../shared-core/colour/slot-symbols.ts'

const SIDE = 32
type Point = readonly [number, number]

/** Corners of each closed ring, curves cut into short straight pieces. */
function ringsOf(outline: readonly PathStep[]): Point[][] {
  const rings: Point[][] = []
  for (const step of outline) {
    const ring = rings.at(-1) ?? []
    if (step[0] === 'M') rings.push([[step[1], step[2]]])
    else if (step[0] === 'L') ring.push([step[1], step[2]])
    else if (step[0] === 'C') ring.push(...curve(ring.at(-1) ?? [0, 0], step))
  }
  return rings
}

function curve([x0, y0]: Point, step: Extract<PathStep, readonly ['C', ...number[]]>): Point[] {
  const [, ax, ay, bx, by, cx, cy] = step
  return Array.from({ length: 8 }, (_, i) => {
    const t = (i + 1) / 8
    const [p, q, r, s] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3]
    return [p * x0 + q * ax + r * bx + s * cx, p * y0 + q * ay + r * by + s * cy]
  })
}

/** How often the rings wind round a point: other than 0 is ink. */
function winding(rings: readonly Point[][], x: number, y: number): number {
  let turns = 0
  for (const ring of rings) {
    for (const [i, [x1, y1]] of ring.entries()) {
      const [x2, y2] = ring[(i + 1) % ring.length] ?? [x1, y1]
      if (y1 > y === y2 > y || x >= x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)) continue
      turns += y2 > y1 ? 1 : -1
    }
  }
  return turns
}

/** The shape as it prints small: ink or none at each place of the box, row by row. */
function printed(outline: readonly PathStep[]): readonly boolean[] {
  const rings = ringsOf(outline)
  const at = (i: number) => (2 * (i + 0.5)) / SIDE - 1
  return Array.from({ length: SIDE * SIDE }, (_, i) => {
    return winding(rings, at(i % SIDE), at(Math.floor(i / SIDE))) !== 0
  })
}

describe('slotSymbols', () => {
  const shapes = slotSymbols(24).flatMap((symbol) =>
    symbol.kind === 'shape' ? [{ ...symbol, print: printed(symbol.outline) }] : [],
  )

  it('draws the first 24 slots as shapes inside the box, with ink enough to see', () => {
    expect(shapes.length).toBe(24)
    for (const { outline, print } of shapes) {
      const places = ringsOf(outline).flat(2)
      expect(Math.max(...places.map(Math.abs))).toBeLessThanOrEqual(1)
      const ink = print.filter(Boolean).length / SIDE ** 2
      expect(ink).toBeGreaterThan(0.08)
      expect(ink).toBeLessThan(0.8)
    }
  })

  it('draws no two alike: a sixteenth of the box or more differs, without any colour', () => {
    const tooNear = shapes.flatMap(({ name, print }, i) =>
      shapes.slice(0, i).flatMap((other) => {
        const differing = print.filter((ink, place) => ink !== other.print[place]).length
        return differing < SIDE ** 2 / 16 ? [`${name} / ${other.name}: ${differing}`] : []
      }),
    )
    expect(tooNear).toEqual([])
  })

  it('gives letters from there on, and the same symbol however many there are', () => {
    expect(slotSymbol(24)).toEqual({ kind: 'letter', name: 'the letter Y', text: 'Y' })
    expect(slotSymbols(30).slice(0, 7)).toEqual(slotSymbols(7))
    expect(new Set(slotSymbols(200).map(({ name }) => name)).size).toBe(200)
  })
})
