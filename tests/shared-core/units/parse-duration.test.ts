import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { durationS } from '../../../shared-core/units/duration.ts'
import {
  formatDuration,
  formatDurationExactly,
} from '../../../shared-core/units/format-duration.ts'
import { parseDuration } from '../../../shared-core/units/parse-duration.ts'

describe('parseDuration', () => {
  it.each([
    ['1 h 25 min', 5100, '1 h 25 min'],
    ['1:25', 5100, '1 h 25 min'],
    ['1h25', 5100, '1 h 25 min'],
    ['85 min', 5100, '1 h 25 min'],
    ['1,5 h', 5400, '1 h 30 min'],
    ['1 1/2 hours', 5400, '1 h 30 min'],
    ['0:05', 300, '5 min'],
    ['1:25:30', 5130, '1 h 25 min 30 s'],
    ['90 s', 90, '1 min 30 s'],
    ['0 min', 0, '0 min'],
    ['26 h', 93_600, '26 h'],
  ])('reads %j as %i s', (text, value, understood) => {
    expect(parseDuration(text)).toEqual({ ok: true, value: { value, understood } })
  })

  it('reads a bare number in the unit it is told and refuses it otherwise', () => {
    expect(parseDuration('85', { unit: 'min' })).toMatchObject({ value: { value: 5100 } })
    expect(parseDuration('85')).toMatchObject({ error: { code: 'missing-unit' } })
  })

  it.each([
    ['1:75', 'not-a-measure'],
    ['2 days', 'unknown-unit'],
    ['25 min 1 h', 'not-a-measure'],
    ['-1:25', 'negative'],
    ['1,250 h', 'ambiguous-number'],
    ['', 'empty'],
    ['999999999999 h', 'too-large'],
  ])('refuses %j: %s', (text, code) => {
    expect(parseDuration(text)).toMatchObject({ ok: false, error: { code } })
  })

  it('reads back every time it restates', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000_000 }), (seconds) => {
        expect(parseDuration(formatDurationExactly(durationS(seconds)))).toMatchObject({
          ok: true,
          value: { value: seconds },
        })
      }),
    )
  })
})

describe('formatDuration', () => {
  it.each([
    [5100, '1 h 25 min'],
    [5129, '1 h 25 min'],
    [5130, '1 h 26 min'],
    [7200, '2 h'],
    [3570, '1 h'],
    [2700, '45 min'],
    [45, '45 s'],
    [0, '0 min'],
    [-5100, '−1 h 25 min'],
  ])('%i s is %s', (seconds, text) => {
    expect(formatDuration(durationS(seconds))).toBe(text)
  })
})
