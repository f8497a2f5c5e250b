import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ciede2000 } from '../../../../shared-core/colour/ciede2000.ts'
import { labOfHex } from '../../../../shared-core/colour/lab.ts'
import { chooseBeads } from '../../../../shared-core/colour/picture/choose-beads.ts'
import { runSteps } from '../../../../shared-core/colour/picture/run-steps.ts'
import { anyHex, evensOf, labsOf } from './some-colours.ts'

function finished<P, T>(steps: Generator<P, T>): T {
  const outcome = runSteps(steps)
  if (outcome.kind === 'cancelled') throw new Error('nobody cancelled')
  return outcome.value
}

describe('chooseBeads', () => {
  it('chooses as well as trying every set, or nearly', () => {
    const beads = fc.uniqueArray(anyHex, { minLength: 4, maxLength: 8 })
    fc.assert(
      fc.property(beads, fc.array(anyHex, { minLength: 1, maxLength: 12 }), (hexes, wanted) => {
        const [labs, targets] = [labsOf(hexes), labsOf(wanted)]
        const costOf = (chosen: readonly number[]) =>
          wanted.reduce((sum, hex) => {
            const lab = labOfHex(hex)
            const to = chosen.map((j) => ciede2000(lab, labOfHex(hexes[j] ?? '#000000')))
            return sum + Math.min(...to)
          }, 0)
        const pairs = hexes.flatMap((_, i) => hexes.slice(0, i).map((_, j) => [i, j]))
        const least = Math.min(...pairs.map(costOf))
        const chosen = finished(chooseBeads(evensOf(targets), labs, evensOf(labs), 2))
        expect(chosen.length).toBe(2)
        expect(costOf(chosen)).toBeLessThanOrEqual(1.3 * least + 1)
      }),
    )
  })
})

describe('chooseBeads of thousands of beads', () => {
  it('can be stopped at any of many small steps, each a little further', () => {
    const hexAt = (i: number) => `#${((i * 2_654_435) % 0xffffff).toString(16).padStart(6, '0')}`
    const labs = labsOf(Array.from({ length: 1_500 }, (_, i) => hexAt(i + 1)))
    const targets = evensOf(labsOf(Array.from({ length: 6_000 }, (_, i) => hexAt(7 * i + 3))))
    const work = chooseBeads(targets, labs, evensOf(labs), 60)
    const steps = Array.from({ length: 100 }, () => work.next())
    expect(steps.every(({ done }) => done === false)).toBe(true)
    const shares = steps.map(({ value }) => value as number)
    expect(shares).toEqual(shares.toSorted((a, b) => a - b))
    expect(shares.at(-1)).toBeLessThanOrEqual(1)
    expect(work.return([])).toEqual({ done: true, value: [] })
  })
})
