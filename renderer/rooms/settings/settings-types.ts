import type { CallOutput } from '../../../shared-core/contract/calls.ts'

type Read = CallOutput<'workshop.read'>

export type Workshop = NonNullable<Read['workshop']>
export type Channel = Read['channels'][number]
export type Place = Read['places'][number]
export type Supplier = Read['suppliers'][number]
