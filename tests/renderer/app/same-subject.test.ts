import { describe, expect, it } from 'vitest'
import { isSameSubject } from '../../../renderer/app/same-subject.ts'

describe('isSameSubject', () => {
  it('lets an answer stand while other figures of the same thing are asked for', () => {
    const two = { designId: 'dsn_a', colourwayId: 'cw_a', units: 2 }
    expect(isSameSubject(two, { ...two, units: 3 })).toBe(true)
    expect(isSameSubject({ today: '2026-11-25' }, { today: '2026-11-26' })).toBe(true)
    expect(isSameSubject({ id: 'a', version: undefined }, { version: 2, id: 'a' })).toBe(true)
  })

  it('never lets one thing’s answer stand under another’s name', () => {
    expect(isSameSubject({ id: 'dsn_a' }, { id: 'dsn_b' })).toBe(false)
    expect(isSameSubject({ designId: 'a', units: 2 }, { designId: 'b', units: 2 })).toBe(false)
    expect(isSameSubject({}, { id: 'a' })).toBe(false)
    expect(isSameSubject({ id: 'a', lineId: 'l' }, { id: 'a' })).toBe(false)
  })
})
