import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { taxInside, taxOnTop } from '../../../shared-core/pricing/tax.ts'
import { anyRatio } from './any-channel.ts'

describe('taxInside and taxOnTop', () => {
  it('undo each other: the tax on a net price is the tax inside its gross', () => {
    fc.assert(
      fc.property(fc.nat(10_000_000), anyRatio(1000), (netMinor, rate) => {
        const onTop = taxOnTop(netMinor, rate)
        expect(taxInside(onTop.grossMinor, rate)).toEqual(onTop)
      }),
    )
  })
})
