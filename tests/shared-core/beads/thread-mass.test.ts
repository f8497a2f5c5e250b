import { describe, expect, it } from 'vitest'
import { threadMass, threadTex } from '../../../shared-core/beads/thread-mass.ts'
import { threads } from '../../../shared-core/beads/threads.ts'
import { measured } from '../../../shared-core/units/spread.ts'
import { inOrder } from './in-order.ts'

describe('threadMass', () => {
  it('weighs 1000 m of 6 lb braid at 22 g, from its tex and from its section', () => {
    const braid = threads.find(({ id }) => id === 'braided-6lb')
    if (braid === undefined) throw new Error('the reference tables have lost their braid')
    const { tex: _, ...untold } = braid
    expect(threadMass(braid, 1_000_000).value).toBe(22_000)
    expect(threadTex(untold).value).toBeCloseTo(22, 1)
    expect(inOrder(threadMass(untold, measured(900, 1000, 1100)))).toBe(true)
  })
})
