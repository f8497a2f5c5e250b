import { describe, expect, it } from 'vitest'

import { agrees, findingLine } from '../../e2e/journey/finding.ts'

describe('a finding', () => {
  it('agrees when the screen, the core and the store say the same', () => {
    const finding = { what: 'Pieces here', screen: '4', core: '4', store: '4' }
    expect(agrees(finding)).toBe(true)
    expect(findingLine(finding)).toBe('Pieces here: 4')
  })

  it('differs when the core computes another figure, and says both', () => {
    const finding = { what: 'Pieces here', screen: '4', core: '5', store: '4' }
    expect(agrees(finding)).toBe(false)
    expect(findingLine(finding)).toBe(
      'DIFFERS  Pieces here: the screen says “4”, the core computes “5”, the store holds “4”',
    )
  })

  it('differs when the store holds another figure, even where there is nothing to compute', () => {
    expect(agrees({ what: 'Pieces here', screen: '4', store: '3' })).toBe(false)
  })

  it('does not take an empty figure of the core or the store for none', () => {
    expect(agrees({ what: 'Pieces here', screen: '4', core: '' })).toBe(false)
    expect(agrees({ what: 'Pieces here', screen: '4', store: '' })).toBe(false)
  })
})
