import { describe, expect, it } from 'vitest'
import { ciede2000 } from '../../../shared-core/colour/ciede2000.ts'
import { colourDifference } from '../../../shared-core/colour/colour-difference.ts'
import { labOfHex } from '../../../shared-core/colour/lab.ts'

describe('colourDifference', () => {
  it.each([
    [0, 'unseen'],
    [1, 'unseen'],
    [2.3, 'barely'],
    [4.9, 'near'],
    [10, 'seen'],
    [10.1, 'other'],
    [100, 'other'],
  ] as const)('calls %s %s', (deltaE, word) => {
    expect(colourDifference(deltaE)).toBe(word)
  })

  it('calls a bead beside itself unseen and black beside white another colour', () => {
    const [black, white] = [labOfHex('#000000'), labOfHex('#ffffff')]
    expect(colourDifference(ciede2000(black, black))).toBe('unseen')
    expect(colourDifference(ciede2000(black, white))).toBe('other')
  })
})
