import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fromBase64, textToBase64, toBase64 } from '../../../renderer/app/base64.ts'

describe('base64', () => {
  it('is what every other program writes for the same bytes, and reads back', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        const written = toBase64(bytes)
        expect(written).toBe(Buffer.from(bytes).toString('base64'))
        expect([...fromBase64(written)]).toEqual([...bytes])
      }),
    )
  })

  it('takes the words of a giant chart, with every letter as it is', () => {
    const text = 'Row 1 (L): (3)A, (1)B, ½ bead\n'.repeat(20_000)
    expect(Buffer.from(textToBase64(text), 'base64').toString()).toBe(text)
  })
})
