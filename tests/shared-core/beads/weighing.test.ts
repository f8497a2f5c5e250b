import { describe, expect, it } from 'vitest'
import { checkWeighing } from '../../../shared-core/beads/weighing.ts'
import { cylinder, weighing } from './some-weighings.ts'

describe('checkWeighing', () => {
  it.each([
    { what: 'no beads', weighed: weighing(0, 500), code: 'weighing-no-beads' },
    { what: 'half a bead', weighed: weighing(1.5, 500), code: 'weighing-no-beads' },
    {
      what: 'tare above gross',
      weighed: weighing(100, 500, 600),
      code: 'weighing-tare-over-gross',
    },
    { what: 'no net weight', weighed: weighing(100, 500, 500), code: 'weighing-no-weight' },
    { what: 'a digit below nothing', weighed: weighing(100, 500, 0, -1), code: 'weighing-digit' },
    { what: 'a forgotten tare', weighed: weighing(100, 5500), code: 'weighing-implausible' },
    { what: 'a slipped decimal', weighed: weighing(100, 50), code: 'weighing-implausible' },
  ])('refuses $what', ({ weighed, code }) => {
    expect(checkWeighing(weighed, cylinder)).toMatchObject({ ok: false, error: { code } })
  })

  it('keeps an honest weighing, and ten beads on a coarse scale', () => {
    expect(checkWeighing(weighing(100, 5500, 5000), cylinder).ok).toBe(true)
    expect(checkWeighing(weighing(10, 50, 0, 10), cylinder).ok).toBe(true)
  })
})
