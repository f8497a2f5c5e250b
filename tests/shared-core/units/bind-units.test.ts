import { expect, test } from 'vitest'

import { bindUnits } from '../../../shared-core/units/bind-units.ts'

test('a number stays on the line of its unit', () => {
  expect(bindUnits('1,33 m + 1,32 m, 12 g or 5 %')).toBe(
    '1,33\u00a0m + 1,32\u00a0m, 12\u00a0g or 5\u00a0%',
  )
})

test('a word that begins like a unit is none', () => {
  expect(bindUnits('2 mirrored, 3 grams, 4 m2')).toBe('2 mirrored, 3 grams, 4 m2')
})
