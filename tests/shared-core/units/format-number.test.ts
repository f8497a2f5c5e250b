import { expect, test } from 'vitest'
import { formatCounted } from '../../../shared-core/units/format-number.ts'

test.each([
  [0, '0 beads'],
  [1, '1 bead'],
  [2, '2 beads'],
  [12_500, '12\u00a0500 beads'],
])('%i is told with its noun as %s', (count, told) => {
  expect(formatCounted(count, 'bead')).toBe(told)
})
