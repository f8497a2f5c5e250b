import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ciede2000 } from '../../../../shared-core/colour/ciede2000.ts'
import { labOfRgb } from '../../../../shared-core/colour/lab.ts'
import { labOfEven, writeEven } from '../../../../shared-core/colour/picture/even-space.ts'

describe('writeEven', () => {
  it('is undone by labOfEven', () => {
    const byte = fc.integer({ min: 0, max: 255 })
    fc.assert(
      fc.property(byte, byte, byte, (r, g, b) => {
        const lab = labOfRgb({ r, g, b })
        const even = new Float64Array(3)
        writeEven(Float64Array.from([lab.l, lab.a, lab.b]), even, 0, 1)
        const back = labOfEven(even[0] ?? 0, even[1] ?? 0, even[2] ?? 0)
        expect(ciede2000(lab, back)).toBeLessThan(1e-4)
      }),
    )
  })
})
