import { describe, expect, it } from 'vitest'

import { benchTable } from '../../scripts/bench/table.ts'
import { withRatios } from '../../scripts/bench/with-ratios.ts'
import { medianOf, type Row } from '../bench/row.ts'

const row = (measure: string, values: readonly number[], more: Partial<Row> = {}): Row => ({
  measure,
  n: values.length,
  ...medianOf(values),
  ...more,
})

describe('medianOf', () => {
  it('gives the middle of an odd number and the mean of two of an even one', () => {
    expect(medianOf([9, 1, 5])).toEqual({ unit: 'ms', median: 5, low: 1, high: 9 })
    expect(medianOf([4, 1, 2, 9], 'MiB')).toEqual({ unit: 'MiB', median: 3, low: 1, high: 9 })
  })
})

describe('withRatios', () => {
  it('compares medians and says whether a target is met', () => {
    const found = withRatios([
      row('floor', [10]),
      row('within', [13], { baseline: 'floor', target: 1.3 }),
      row('beyond', [14], { baseline: 'floor', target: 1.3 }),
    ])
    expect(found.map(({ ratio, verdict }) => [ratio, verdict])).toEqual([
      [undefined, undefined],
      [1.3, 'met'],
      [1.4, 'missed'],
    ])
  })

  it('refuses a baseline that is not there', () => {
    expect(() => withRatios([row('alone', [1], { baseline: 'nobody' })])).toThrow('nobody')
  })
})

describe('benchTable', () => {
  it('lays figures out under their heads', () => {
    const text = benchTable(
      withRatios([row('floor', [10]), row('ours', [123], { baseline: 'floor' })]),
    )
    expect(text.split('\n').map((line) => line.trimEnd().split(/ {2,}/))).toEqual([
      ['measure', 'median', 'spread', 'runs', 'ratio', 'target'],
      ['floor', '10.0 ms', '10.0 to 10.0', '1'],
      ['ours', '123 ms', '123 to 123', '1', '12.30x'],
    ])
  })
})
