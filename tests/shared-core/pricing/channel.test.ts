import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkChannel } from '../../../shared-core/pricing/channel.ts'
import { ratio } from '../../../shared-core/units/ratio.ts'
import { anyChannel } from './any-channel.ts'
import { gallery } from './some-channels.ts'

describe('checkChannel', () => {
  it('passes what a channel can be', () => {
    fc.assert(
      fc.property(anyChannel, (channel) => {
        expect(checkChannel(channel)).toEqual({ ok: true, value: channel })
      }),
    )
  })

  it.each([
    [{ ...gallery, commissionShare: ratio('1') }, 'bad-percentage', 'commissionShare'],
    [
      { ...gallery, fee: { ...gallery.fee, percent: ratio('-0.01') } },
      'bad-percentage',
      'fee.percent',
    ],
    [{ ...gallery, tax: { rate: ratio('1.01'), mode: 'added' } }, 'bad-percentage', 'tax.rate'],
    [
      { ...gallery, payment: { ...gallery.payment, fixedMinor: -1 } },
      'bad-amount',
      'payment.fixedMinor',
    ],
    [
      { ...gallery, shipping: { ...gallery.shipping, costMinor: 0.5 } },
      'bad-amount',
      'shipping.costMinor',
    ],
  ] as const)('refuses channel %#', (channel, code, field) => {
    expect(checkChannel(channel)).toMatchObject({ error: { code, field } })
  })
})
