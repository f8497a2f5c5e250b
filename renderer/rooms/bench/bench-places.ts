import type { CallOutput } from '../../../shared-core/contract/calls.ts'

/** Where the Bench says what it has learnt. */
export const PACE_PAGE = 'pace'

/** The row reader over some work. */
export const READING = 'read'

export const UP = { href: '#/bench', label: 'Bench' } as const

/** Work at the bench as lists tell it. */
export type BenchWork = CallOutput<'bench.list'>['works'][number]
