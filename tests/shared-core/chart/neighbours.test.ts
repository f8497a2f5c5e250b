import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type CellRef, STITCH_KINDS, type StitchKind } from '../../../shared-core/chart/chart.ts'
import { neighbourSteps } from '../../../shared-core/chart/neighbours.ts'
import { stitchPhase } from '../../../shared-core/chart/row-phase.ts'
import { cellCentre, stitchPitch } from '../../../shared-core/chart/stitch-pitch.ts'

const SIZE = { diameterMm: 2, lengthMm: 2, threadMm: 0 }

/** Cells whose 2 mm boxes share an edge, found from where the beads lie. */
function touching(stitch: StitchKind, { row, at }: CellRef): readonly string[] {
  const pitch = stitchPitch(stitch, SIZE)
  const here = cellCentre(pitch, row, at)
  const found: string[] = []
  for (let down = -2; down <= 2; down += 1) {
    for (let across = -4; across <= 4; across += 1) {
      if ((across - down * Number(stitch === 'brick')) % 2 !== 0) continue
      const there = cellCentre(pitch, row + down, at + across)
      const [x, y] = [Math.abs(there.xMm - here.xMm), Math.abs(there.yMm - here.yMm)]
      if (Math.max(x, y) === 2 && Math.min(x, y) < 2) found.push(`${down},${across}`)
    }
  }
  return found.toSorted()
}

describe('neighbourSteps', () => {
  it.each(STITCH_KINDS.filter((stitch) => stitch !== 'right-angle-weave'))(
    'steps to the beads that touch in %s',
    (stitch) => {
      for (const row of [4, 5]) {
        for (const column of [6, 7]) {
          const at = 2 * column + stitchPhase(stitch, row, 0)
          const steps = neighbourSteps(stitch, row, at).map((step) => step.join(','))
          expect(steps.toSorted()).toEqual(touching(stitch, { row, at }))
        }
      }
    },
  )

  it('steps over both joints of a right-angle weave bead', () => {
    const sorted = (row: number, at: number): readonly string[] =>
      neighbourSteps('right-angle-weave', row, at)
        .map((step) => step.join(','))
        .toSorted()
    expect(sorted(0, 1)).toEqual(['-1,-1', '-1,1', '0,-2', '0,2', '1,-1', '1,1'])
    expect(sorted(1, 0)).toEqual(['-1,-1', '-1,1', '-2,0', '1,-1', '1,1', '2,0'])
  })

  it('leads back again', () => {
    fc.assert(
      fc.property(fc.constantFrom(...STITCH_KINDS), fc.nat(9), fc.nat(9), (stitch, row, column) => {
        const at = 2 * column + stitchPhase(stitch, row, 0)
        for (const [down, across] of neighbourSteps(stitch, row, at)) {
          const back = neighbourSteps(stitch, row + down, at + across).map((step) => step.join(','))
          expect(back).toContain(`${-down || 0},${-across || 0}`)
        }
      }),
    )
  })
})
