import type { z } from 'zod'
import type { Refusal } from '../refusal.ts'
import { benchCalls } from './bench-calls.ts'
import type { CallSpec } from './call.ts'
import { dayCalls } from './day-calls.ts'
import { designCalls } from './design-calls.ts'
import { documentCalls } from './document-calls.ts'
import { draftCalls } from './draft-calls.ts'
import { engineCalls } from './engine-calls.ts'
import { historyCalls } from './history-calls.ts'
import { orderCalls } from './order-calls.ts'
import { pieceCalls } from './piece-calls.ts'
import { priceCalls } from './price-calls.ts'
import { stockCalls } from './stock-calls.ts'
import { tableCalls } from './table-calls.ts'
import { workshopCalls } from './workshop-calls.ts'

/** Every call between a screen and the service. A call that is not in this table does not exist. */
export const calls = {
  ...workshopCalls,
  ...historyCalls,
  ...tableCalls,
  ...stockCalls,
  ...designCalls,
  ...draftCalls,
  ...documentCalls,
  ...orderCalls,
  ...priceCalls,
  ...pieceCalls,
  ...benchCalls,
  ...dayCalls,
  ...engineCalls,
} as const satisfies Record<string, CallSpec>

export type Calls = typeof calls
export type CallName = keyof Calls
/** What a caller sends. */
export type CallInput<N extends CallName> = z.input<Calls[N]['input']>
/** What a handler receives after parsing. */
export type ParsedInput<N extends CallName> = z.output<Calls[N]['input']>
/** What a call answers with. */
export type CallOutput<N extends CallName> = z.output<Calls[N]['output']>

/**
 * The envelope of every answer. Refusals travel as data: code, plain sentence, what to do next.
 * `unchanged` stands where an act found everything as it was: there is no step of it to take back.
 */
export type Answer<T> =
  | Readonly<{ ok: true; value: T; unchanged?: true }>
  | Readonly<{ ok: false; error: Refusal }>

/** Whether a text names a call of the contract. */
export function isCallName(text: string): text is CallName {
  return Object.hasOwn(calls, text)
}
