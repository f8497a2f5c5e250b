import { expect, test } from 'vitest'

import { writeLengths } from '../../../shared-core/route/write-lengths.ts'

const inCm = (mm: number) => `${mm / 10} cm`

test('lengths of thread are written anew, every one of a step', () => {
  expect(writeLengths('hang a warp of 454 mm; thread the needle with 1413 mm', inCm)).toBe(
    'hang a warp of 45.4 cm; thread the needle with 141.3 cm',
  )
})

test('the size of a bead is none, and stays', () => {
  expect(writeLengths('pick up the drop of 12 mm', inCm)).toBe('pick up the drop of 12 mm')
})
