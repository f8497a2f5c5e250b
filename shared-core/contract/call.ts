import type { z } from 'zod'

/** What a call reads or changes; a screen refreshes what it read when another call changed it. */
export type Topic =
  | 'workshop'
  | 'tables'
  | 'stock'
  | 'designs'
  | 'drafts'
  | 'orders'
  | 'prices'
  | 'makes'
  | 'bench'
  | 'pieces'
  | 'history'

/**
 * One entry of the contract.
 *
 * `summary` says in one sentence what the call does; `reads` and `changes` are its topics. A call
 * with `changes` runs in one transaction, is kept in the history, and can be undone unless
 * `undoable` is false.
 */
export type CallSpec = Readonly<{
  summary: string
  input: z.ZodType
  output: z.ZodType
  reads: readonly Topic[]
  changes: readonly Topic[]
  undoable: boolean
}>

type Shapes<I extends z.ZodType, O extends z.ZodType> = Readonly<{
  summary: string
  input: I
  output: O
}>

/** A call that only reads. */
export function query<I extends z.ZodType, O extends z.ZodType>(
  spec: Shapes<I, O> & Readonly<{ reads: readonly Topic[] }>,
) {
  return { ...spec, changes: [], undoable: false } as const
}

/** A call that changes the store and can be undone. */
export function act<I extends z.ZodType, O extends z.ZodType>(
  spec: Shapes<I, O> & Readonly<{ changes: readonly Topic[] }>,
) {
  return { ...spec, reads: [], undoable: true } as const
}

/** A call that changes the store and stands outside the history: beginning a workshop, undo itself. */
export function step<I extends z.ZodType, O extends z.ZodType>(
  spec: Shapes<I, O> & Readonly<{ changes: readonly Topic[] }>,
) {
  return { ...spec, reads: [], undoable: false } as const
}
