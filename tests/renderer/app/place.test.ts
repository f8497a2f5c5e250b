import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { hrefTo, parsePlace } from '../../../renderer/app/place.ts'
import { rooms } from '../../../renderer/app/rooms.ts'

const anyPart = fc.string({ minLength: 1, maxLength: 20, unit: 'grapheme' })

describe('place', () => {
  it.each([
    ['', { room: 'today' }],
    ['#/stock', { room: 'stock' }],
    ['#/stock/mat_3f9k2m7q', { room: 'stock', id: 'mat_3f9k2m7q' }],
    ['#/orders/ord_1/change', { room: 'orders', id: 'ord_1', sub: 'change' }],
    ['#/attic', { room: 'today' }],
    ['#/stock/%E0%A4%A', { room: 'stock', id: '%E0%A4%A' }],
  ])('reads %s', (hash, place) => {
    expect(parsePlace(hash)).toEqual(place)
  })

  it('comes back from its address, whatever the parts hold', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...rooms.map(({ name }) => name)),
        fc.option(fc.tuple(anyPart, fc.option(anyPart, { nil: undefined })), { nil: undefined }),
        (room, parts) => {
          const place = { room, id: parts?.[0], sub: parts?.[1] }
          expect(parsePlace(hrefTo(place))).toEqual(place)
        },
      ),
    )
  })
})
