import { describe, expect, it } from 'vitest'
import { placeRefusal } from '../../../renderer/app/place-refusal.ts'

const fields = ['form.name', 'form.holeMm'] as const
const refused = (field?: string) => ({
  ...{ code: 'bead-hole-too-wide', message: 'That does not fit.', next: 'Measure it again.' },
  ...(field === undefined ? {} : { field }),
})

describe('placeRefusal', () => {
  it('puts a refusal of a field, or of a part of it, to that field alone', () => {
    for (const field of ['form.holeMm', 'form.holeMm.low']) {
      const { at, above } = placeRefusal(refused(field), fields)
      expect(at('form.holeMm')).toBe('That does not fit. Measure it again.')
      expect(at('form.name')).toBeUndefined()
      expect(above).toBeUndefined()
    }
  })

  it('tells above the fields what is about none of them', () => {
    for (const field of [undefined, 'form', 'form.id', 'form.names']) {
      const { at, above } = placeRefusal(refused(field), fields)
      expect(above).toEqual(refused(field))
      expect(fields.map(at)).toEqual([undefined, undefined])
    }
  })

  it('tells nothing while nothing is refused', () => {
    const { at, above } = placeRefusal(undefined, fields)
    expect(above).toBeUndefined()
    expect(at('form.name')).toBeUndefined()
  })
})
