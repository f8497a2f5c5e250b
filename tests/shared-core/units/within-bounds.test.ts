import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { parseCount } from '../../../shared-core/units/parse-count.ts'
import { parseMoney } from '../../../shared-core/units/parse-money.ts'
import { withinBounds } from '../../../shared-core/units/within-bounds.ts'

const days = { least: 1, most: 365, of: Number, write: (count: number) => `${count} days` }
const read = (text: string) => withinBounds(parseCount(text, {}), text, days)

describe('withinBounds', () => {
  it('takes what lies between, both bounds included, and nothing else', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2_000 }), (count) => {
        expect(read(String(count)).ok).toBe(count >= 1 && count <= 365)
      }),
    )
  })

  it('says what was found and the bound that it passes', () => {
    expect(read(' 9999')).toMatchObject({
      error: {
        code: 'too-much',
        message: '“9999” is too much here.',
        next: 'Type 365 days at most.',
      },
    })
    expect(read('0')).toMatchObject({
      error: {
        code: 'too-little',
        message: '“0” is too little here.',
        next: 'Type 1 days or more.',
      },
    })
  })

  it('compares an amount by its minor units', () => {
    const step = (text: string) =>
      withinBounds(parseMoney(text, { currency: currencyCode('EUR'), decimal: ',' }), text, {
        ...{ least: 1, most: 100_000, write: String },
        of: ({ amountMinor }) => amountMinor,
      })
    expect(step('1000,00').ok).toBe(true)
    expect(step('1000,01').ok).toBe(false)
  })

  it('leaves a reading’s own refusal as it is', () => {
    expect(read('zwölf')).toEqual(parseCount('zwölf', {}))
  })
})
