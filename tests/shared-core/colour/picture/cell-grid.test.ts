import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cellLines } from '../../../../shared-core/colour/picture/cell-lines.ts'
import { cellNeighbours } from '../../../../shared-core/colour/picture/cell-neighbours.ts'
import type { CellLayout } from '../../../../shared-core/colour/picture/picture.ts'
import { recolourStrays } from '../../../../shared-core/colour/picture/stray-beads.ts'
import { brick, peyote, square } from './layouts.ts'

const neighboursOf = (layout: CellLayout) => cellNeighbours(layout, cellLines(layout))
const around = (layout: CellLayout, cell: number) => {
  const { starts, of } = neighboursOf(layout)
  return Array.from(of.slice(starts[cell], starts[cell + 1])).toSorted((a, b) => a - b)
}

describe('cellLines', () => {
  it('finds the rows of a square grid', () => {
    const { order, starts, step } = cellLines(square(3, 2))
    expect([...order]).toEqual([0, 1, 2, 3, 4, 5])
    expect([...starts]).toEqual([0, 3, 6])
    expect(step).toBe(1)
  })

  it('splits a peyote row into its two heights, two columns a step', () => {
    const { order, starts, step } = cellLines(peyote(4, 1))
    expect([...order]).toEqual([0, 2, 1, 3])
    expect([...starts]).toEqual([0, 2, 4])
    expect(step).toBeCloseTo(2.6, 9)
  })

  it('is the same whatever order the cells come in', () => {
    const cells = brick(5, 4)
    fc.assert(
      fc.property(fc.shuffledSubarray([...new Array(20).keys()], { minLength: 20 }), (order) => {
        const at = (values: ArrayLike<number>) => order.map((cell) => values[cell] ?? Number.NaN)
        const shuffled = cellLines({ ...cells, x: at(cells.x), y: at(cells.y) })
        const back = Array.from(shuffled.order, (place) => order[place])
        expect(back).toEqual([...cellLines(cells).order])
      }),
    )
  })
})

describe('cellNeighbours', () => {
  it.each([
    { what: 'the middle of a square grid', layout: square(3, 3), cell: 4, found: [1, 3, 5, 7] },
    { what: 'its corner', layout: square(3, 3), cell: 0, found: [1, 3] },
    { what: 'brick, even row', layout: brick(3, 3), cell: 4, found: [1, 2, 3, 5, 7, 8] },
    { what: 'brick, odd row', layout: brick(3, 4), cell: 7, found: [3, 4, 6, 8, 9, 10] },
    { what: 'peyote, high column', layout: peyote(3, 3), cell: 3, found: [0, 1, 4, 6] },
    { what: 'peyote, low column', layout: peyote(3, 3), cell: 4, found: [1, 3, 5, 6, 7, 8] },
    { what: 'a bead alone', layout: square(1, 1), cell: 0, found: [] },
  ])('of $what are those that share an edge', ({ layout, cell, found }) => {
    expect(around(layout, cell)).toEqual(found)
  })

  it('are the same as comparing every cell with every other', () => {
    const anyLayout = fc
      .tuple(
        fc.constantFrom(square, brick, peyote),
        fc.integer({ min: 1, max: 7 }),
        fc.integer({ min: 1, max: 7 }),
      )
      .map(([make, across, down]) => make(across, down))
    fc.assert(
      fc.property(anyLayout, (layout) => {
        const { pitchX, pitchY } = layout
        const cells = [...new Array(layout.x.length).keys()]
        const touching = (a: number, b: number) => {
          const dx = Math.abs((layout.x[a] ?? 0) - (layout.x[b] ?? 0)) / pitchX
          const dy = Math.abs((layout.y[a] ?? 0) - (layout.y[b] ?? 0)) / pitchY
          return a !== b && dx < 1.05 && dy < 1.05 && (dx < 0.95 || dy < 0.95)
        }
        const { starts, of } = neighboursOf(layout)
        for (const cell of cells) {
          const found = Array.from(of.slice(starts[cell], starts[cell + 1]))
          expect(found.toSorted((a, b) => a - b)).toEqual(cells.filter((b) => touching(cell, b)))
        }
      }),
    )
  })
})

const NONE = 0xffff
const flatCost = () => 1

/** Sizes of the patches of a colouring, found by spreading from cell to cell. */
function patchSizes(colours: Uint16Array, layout: CellLayout): number[] {
  const { starts, of } = neighboursOf(layout)
  const seen = new Set<number>()
  return [...colours.keys()].flatMap((first) => {
    if (seen.has(first) || colours[first] === NONE) return []
    const patch = [first]
    seen.add(first)
    for (const cell of patch) {
      for (const next of of.slice(starts[cell], starts[cell + 1])) {
        if (seen.has(next) || colours[next] !== colours[first]) continue
        seen.add(next)
        patch.push(next)
      }
    }
    return [patch.length]
  })
}

describe('recolourStrays', () => {
  it('gives a single bead the colour round it', () => {
    const colours = Uint16Array.from([0, 0, 0, 0, 1, 0, 0, 0, 0])
    expect(recolourStrays(colours, NONE, neighboursOf(square(3, 3)), 2, flatCost)).toBe(1)
    expect([...colours]).toEqual(new Array(9).fill(0))
  })

  it('gives it the cheapest colour of those that touch it', () => {
    const colours = Uint16Array.from([0, 0, 1, 2, 2])
    const cost = (_: number, colour: number) => (colour === 2 ? 1 : 5)
    recolourStrays(colours, NONE, neighboursOf(square(5, 1)), 2, cost)
    expect([...colours]).toEqual([0, 0, 2, 2, 2])
  })

  it('leaves a patch that touches nothing, and empty places', () => {
    const colours = Uint16Array.from([0, NONE, 1])
    expect(recolourStrays(colours, NONE, neighboursOf(square(3, 1)), 5, flatCost)).toBe(0)
    expect([...colours]).toEqual([0, NONE, 1])
  })

  it('leaves no patch under the limit in a whole piece, whatever the colours', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 64, maxLength: 64 }),
        fc.integer({ min: 1, max: 10 }),
        fc.constantFrom(square, brick, peyote),
        (given, least, make) => {
          const layout = make(8, 8)
          const colours = Uint16Array.from(given)
          const cost = (cell: number, colour: number) => Math.abs((given[cell] ?? 0) - colour)
          const changed = recolourStrays(colours, NONE, neighboursOf(layout), least, cost)
          const sizes = patchSizes(colours, layout)
          expect(sizes.every((size) => size >= least)).toBe(true)
          expect(changed > 0).toBe(
            patchSizes(Uint16Array.from(given), layout).some((n) => n < least),
          )
          expect(new Set(colours).size).toBeLessThanOrEqual(new Set(given).size)
        },
      ),
    )
  })
})
