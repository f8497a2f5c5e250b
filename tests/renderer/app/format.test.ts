import { describe, expect, it } from 'vitest'
import { makeFormat } from '../../../renderer/app/format.ts'
import { estimated, exactly } from '../../../shared-core/units/spread.ts'

const format = makeFormat({ decimal: ',', currency: 'EUR', today: '2026-11-25' })
const plain = (text: string) => text.replaceAll('\u00a0', ' ')

describe('makeFormat', () => {
  it('writes figures with the workshop’s own mark', () => {
    expect(plain(format.mass(18_397.2))).toBe('18,4 g')
    expect(plain(format.money(-1_250))).toBe('\u2212€ 12,50')
    expect(format.percent('6.5')).toBe('6,5 %')
  })

  it('lets a noun agree with its count', () => {
    expect(plain(format.counted(1, 'pair'))).toBe('1 pair')
    expect(plain(format.counted(12, 'pair'))).toBe('12 pairs')
    expect(plain(format.counted(0, 'box', 'boxes'))).toBe('0 boxes')
  })

  it('says how far away a date is', () => {
    expect(format.date('2026-12-04')).toBe('Fri 4 Dec')
    expect(format.away('2026-12-04')).toBe('in 9 days')
  })

  it('writes a range only where its ends differ as written', () => {
    expect(plain(format.range(estimated(17_900, 18_400, 18_900), format.mass))).toBe(
      '17,9 g to 18,9 g',
    )
    expect(format.range(exactly(18_400), format.mass)).toBe('')
  })

  it('writes a quantity in its own unit', () => {
    expect(plain(format.quantity(12_500, 'mg'))).toBe('12,5 g')
    expect(plain(format.quantity(4_120, 'mm'))).toBe('4,12 m')
    expect(format.quantity(38, 'piece')).toBe('38')
  })
})
