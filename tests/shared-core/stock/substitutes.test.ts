import { describe, expect, it } from 'vitest'
import { type BeadOnHand, substitutes } from '../../../shared-core/stock/substitutes.ts'

const bead = (materialId: string, colour: number, change: Partial<BeadOnHand<number>> = {}) => ({
  materialId,
  formId: 'cylinder-11',
  finish: 'matte',
  colour,
  lotsMatter: true,
  lots: [5000],
  ...change,
})

describe('substitutes', () => {
  it('gives beads of the same form with enough stock, nearest colour first, like finish before others', () => {
    const found = substitutes(
      {
        bead: bead('slate', 50),
        perUnit: 1000,
        units: 4,
        candidates: [
          bead('slate', 50),
          bead('far', 80),
          bead('gloss', 53, { finish: 'gloss' }),
          bead('near', 47),
          bead('other form', 50, { formId: 'rocaille-11' }),
          bead('ends of lots', 50, { lots: [1999, 1999, 999] }),
          bead('mixable', 56, { lots: [1999, 1999, 999], lotsMatter: false }),
        ],
      },
      (a, b) => Math.abs(a - b),
    )
    expect(found).toEqual([
      { materialId: 'near', colourDifference: 3, sameFinish: true, units: 5 },
      { materialId: 'gloss', colourDifference: 3, sameFinish: false, units: 5 },
      { materialId: 'mixable', colourDifference: 6, sameFinish: true, units: 4 },
      { materialId: 'far', colourDifference: 30, sameFinish: true, units: 5 },
    ])
  })
})
