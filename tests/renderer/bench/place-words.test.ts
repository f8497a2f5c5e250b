import { describe, expect, it } from 'vitest'
import { makeFormat } from '../../../renderer/app/format.ts'
import { type PlacedWork, placeWords } from '../../../renderer/rooms/bench/place-words.ts'
import { calendarDate } from '../../../shared-core/units/calendar-date.ts'

const format = makeFormat({ decimal: ',', currency: 'EUR', today: calendarDate('2026-11-25') })
const hand: NonNullable<PlacedWork['hand']> = {
  ...{ piece: 'Diamond', copy: 2, copies: 2, isMirrored: true, pieces: 2 },
  at: { kind: 'row', rows: [9], of: 23 },
}
const work = (more: Partial<PlacedWork>): PlacedWork => ({
  ...{ place: { copy: 1, part: 0, step: 60 }, workedS: 90, unitsDone: 0, units: 2, hand },
  ...more,
})

describe('placeWords', () => {
  it('tells the piece and the row as the maker counts it', () => {
    expect(placeWords(work({}), format)).toBe('Diamond 2 of 2, mirrored, row 9 of 23')
    const lone = { ...hand, copy: 1, copies: 1, pieces: 1, isMirrored: false }
    const strung = { kind: 'row', rows: [1, 2], of: 30 } as const
    expect(placeWords(work({ hand: { ...lone, at: strung } }), format)).toBe('rows 1 and 2 of 30')
  })

  it('tells a strand by its name, and which where there are more', () => {
    const at = (number: number, of: number) =>
      ({ kind: 'strand', name: 'Reed', number, of }) as const
    const lone = { ...hand, copies: 1, pieces: 1 }
    expect(placeWords(work({ hand: { ...lone, at: at(3, 9) } }), format)).toBe('Reed, 3 of 9')
    expect(placeWords(work({ hand: { ...lone, at: at(1, 1) } }), format)).toBe('Reed')
  })

  it('tells what is not begun and what is all stitched', () => {
    const start = { place: { copy: 0, part: 0, step: 0 }, workedS: 0 }
    expect(placeWords(work(start), format)).toBe('not stitched yet')
    expect(placeWords(work({ unitsDone: 2, hand: null }), format)).toBe('all stitched')
  })
})
