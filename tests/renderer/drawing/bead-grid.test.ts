import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { buildGrid } from '../../../renderer/drawing/bead-grid.ts'
import type { BeadScene } from '../../../renderer/drawing/bead-scene.ts'

/** Scattered beads of 1.6 by 1.3 mm on a work of 60 by 90 mm. */
function scattered(places: readonly (readonly [number, number])[]): BeadScene {
  return {
    xMm: Float32Array.from(places, ([x]) => x),
    yMm: Float32Array.from(places, ([, y]) => y),
    slotOf: new Uint16Array(places.length),
    palette: [],
    widthMm: 60,
    heightMm: 90,
    beadWidthMm: 1.6,
    beadHeightMm: 1.3,
    axis: 'vertical',
  }
}

const within = (most: number) => fc.double({ min: 0, max: most, noNaN: true })
const anyBox = fc
  .tuple(within(60), within(90), within(30), within(30))
  .map(([left, top, width, height]) => ({ left, top, right: left + width, bottom: top + height }))

describe('buildGrid', () => {
  it('finds the beads that touch a box, each once, as looking at every bead does', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(within(60), within(90)), { maxLength: 300 }),
        anyBox,
        (places, box) => {
          const scene = scattered(places)
          const found: number[] = []
          buildGrid(scene).forEachIn(box, (bead) => found.push(bead))
          const all = [...scene.xMm.keys()].filter((bead) => {
            const [x = 0, y = 0] = [scene.xMm[bead], scene.yMm[bead]]
            return (
              x >= box.left - 0.8 &&
              x <= box.right + 0.8 &&
              y >= box.top - 0.65 &&
              y <= box.bottom + 0.65
            )
          })
          expect(found.toSorted((a, b) => a - b)).toEqual(all)
        },
      ),
    )
  })
})
