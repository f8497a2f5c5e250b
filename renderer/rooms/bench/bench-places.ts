import type { CallOutput } from '../../../shared-core/contract/calls.ts'

/** Where the Bench says what it has learnt. */
export const PACE_PAGE = 'pace'

/** Where a piece is started of something named after it: `#/bench/start/` and a design's or an order line's id. */
export const START = 'start'

/** The row reader over some work. */
export const READING = 'read'

export const UP = { href: '#/bench', label: 'Bench' } as const

/** Work at the bench as lists tell it. */
export type BenchWork = CallOutput<'bench.list'>['works'][number]

/** Whether a hand has been at it: time was kept, or the place has moved. */
export function isBegun({ workedS, place }: Pick<BenchWork, 'workedS' | 'place'>): boolean {
  return workedS > 0 || place.copy + place.part + place.step > 0
}
